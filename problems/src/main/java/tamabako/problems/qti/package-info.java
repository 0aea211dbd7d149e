/// Problems as items of QTI 3.0 (1EdTech, Question and Test Interoperability: Assessment, Section
/// and Item Information Model, version 3.0, final, 1 May 2022), for schools with a test system.
///
/// An item asks for one sum and takes its answer as text: the answers are strings, because a number
/// in QTI has 32 bits or is not exact. The problem itself stands in the item as JSON, as the
/// default value of the outcome variable `TAMABAKO_PROBLEM`, so that it comes back without loss:
///
/// ```java
/// String item = QtiItem.write(problem, Locale.ENGLISH);
/// ProblemFile back = QtiPackage.read(Map.of("item.xml", item));
/// ```
///
/// [QtiPackage] makes the files of a package; packing them is for the caller, as this module has no
/// input or output.
@NullMarked
package tamabako.problems.qti;

import org.jspecify.annotations.NullMarked;
