/// Work on a product.
@NullMarked
package tamabako.frame.product;

import org.jspecify.annotations.NullMarked;
