package plumbleaf.documents.view;

import plumbleaf.documents.drawing.Point;
import plumbleaf.engine.gate.Place;
import plumbleaf.engine.job.Side;

/** A leaf's own plane as someone outside sees it: r runs to the right when the hinges are on the left, to the left when they are on the right. */
record Outside(int rightward) {
    static Outside of(Side hinge) {
        return new Outside(hinge == Side.LEFT ? 1 : -1);
    }

    Point at(double rIn, double zIn) {
        return new Point(rightward * rIn, zIn);
    }

    Point at(Place place) {
        return at(place.r().inches(), place.z().inches());
    }

    /** The direction of growing r on the drawing. */
    double alongRad() {
        return rightward > 0 ? 0 : Math.PI;
    }
}
