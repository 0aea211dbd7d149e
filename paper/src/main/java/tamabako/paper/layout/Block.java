package tamabako.paper.layout;

/// A section of print: its heading and its body.
record Block(Over head, Piece piece) {

    /// What stands over a body.
    interface Over {

        /// What it says, for pages on which the body goes on.
        String heading();

        void lay(Flow flow);

        double height();
    }
}
