package tamabako.paper.layout;

/// A section of print: its heading and its body.
record Block(SectionHead head, Piece piece) {}
