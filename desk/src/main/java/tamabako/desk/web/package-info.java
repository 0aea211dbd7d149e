/// The desk's web server, and the seam that its pages plug into.
///
/// A page package offers [Routes]: each [Route] is a method, an address and what answers there. An
/// answer is a function from a [Request] to a [Reply], so pages know nothing of sockets or headers:
///
/// ```java
/// Route.get("/work", request -> Reply.page("work/page.jte", Map.of("sum", request.query().text("sum"))))
/// ```
///
/// A route is for teachers unless it says for whom else: `.forWhom(Access.PUPIL)`. A [Request]
/// tells [Who] asks and, as its [Caller], from where; the [Door] decides who comes in.
///
/// The [DeskServer] does the rest: it finds the route, asks the door, reads the form, chooses the
/// reader's language, renders the template in the layout, and turns everything that goes wrong into
/// a page that says what, where and how to mend it. Templates take a [View] named `view` beside
/// their own parameters; every text comes from the [Words] of the reader's language.
@NullMarked
package tamabako.desk.web;

import org.jspecify.annotations.NullMarked;
