package beltmark.drawing.setup;

/**
 * One side of a conveyor on a sheet, seen along the belt travel: the tensioner outboard, then the post it is fixed to, then
 * the edge of the belt. Widths are not to scale. Places are told in millimetres of paper from the outboard edge.
 *
 * @param outboard where the outboard edge lies on the sheet
 * @param towardsBelt 1 when the belt is to the right, -1 when the side is mirrored
 * @param width from the outboard edge to where the belt is broken off
 */
record Column(double outboard, int towardsBelt, double width) {

    static final double LANE = 6;
    static final double OBSTACLE_FROM = 0.8;
    static final double OBSTACLE_TO = 26.3;
    static final double TENSIONER_FROM = 7.5;
    static final double TENSIONER_MIDDLE = 15.5;
    static final double TENSIONER_TO = 23.5;
    static final double POST_FROM = 27;
    static final double POST_TO = 32;
    static final double BELT_FROM = 34;
    static final double BLADE_FROM = 37;

    double x(double across) {
        return outboard + towardsBelt * across;
    }

    /** {@return the edge that lies further left on the sheet} */
    double left() {
        return Math.min(x(0), x(width));
    }

    /** {@return the edge that lies further right on the sheet} */
    double right() {
        return Math.max(x(0), x(width));
    }
}
