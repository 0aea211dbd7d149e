/// Tests of the desk's server.
@NullMarked
package tamabako.desk.web;

import org.jspecify.annotations.NullMarked;
