package tamabako.paper.layout;

/// A section of print: its heading and its body.
record Block(Over head, Piece piece) {

    /// What stands over a body.
    interface Over {

        void lay(Flow flow);

        double height();
    }
}
