package plumbleaf.engine.frame;

import java.util.function.Function;

/** Something that acts on the frame. All components are along or about the global axes. */
public sealed interface Load {
    <T> T match(
            Function<AtNode, T> atNode,
            Function<Uniform, T> uniform,
            Function<AtPoint, T> atPoint,
            Function<Settlement, T> settlement);

    /** The same load, this many times as large. */
    Load times(double factor);

    /** Force and couple at a node. */
    record AtNode(String node, Vector forceLb, Vector momentLbIn) implements Load {
        public AtNode(String node, Vector forceLb) {
            this(node, forceLb, Vector.ZERO);
        }

        @Override
        public <T> T match(
                Function<AtNode, T> atNode,
                Function<Uniform, T> uniform,
                Function<AtPoint, T> atPoint,
                Function<Settlement, T> settlement) {
            return atNode.apply(this);
        }

        @Override
        public AtNode times(double factor) {
            return new AtNode(node, forceLb.times(factor), momentLbIn.times(factor));
        }
    }

    /**
     * Force and couple per inch of the member's flexible length, over a part of it or all.
     *
     * @param couplePerInchLb couple per inch: what a load beside the member's axis adds
     * @param fromIn where it begins, from the member's start
     * @param toIn where it ends; anything beyond the member's end is the end
     */
    record Uniform(String member, Vector perInchLb, Vector couplePerInchLb, double fromIn, double toIn)
            implements Load {
        public Uniform {
            if (!(fromIn >= 0 && toIn > fromIn))
                throw new IllegalArgumentException("A uniform load on " + member + " must end after it begins");
        }

        /** Over a part of the member, through its axis. */
        public Uniform(String member, Vector perInchLb, double fromIn, double toIn) {
            this(member, perInchLb, Vector.ZERO, fromIn, toIn);
        }

        /** Over the whole member, through its axis. */
        public Uniform(String member, Vector perInchLb) {
            this(member, perInchLb, Vector.ZERO, 0, Double.POSITIVE_INFINITY);
        }

        @Override
        public <T> T match(
                Function<AtNode, T> atNode,
                Function<Uniform, T> uniform,
                Function<AtPoint, T> atPoint,
                Function<Settlement, T> settlement) {
            return uniform.apply(this);
        }

        @Override
        public Uniform times(double factor) {
            return new Uniform(member, perInchLb.times(factor), couplePerInchLb.times(factor), fromIn, toIn);
        }
    }

    /** Force and couple at a point of a member, measured from its start. */
    record AtPoint(String member, double atIn, Vector forceLb, Vector momentLbIn) implements Load {
        public AtPoint {
            if (!(atIn >= 0)) throw new IllegalArgumentException("A load on " + member + " lies before its start");
        }

        public AtPoint(String member, double atIn, Vector forceLb) {
            this(member, atIn, forceLb, Vector.ZERO);
        }

        @Override
        public <T> T match(
                Function<AtNode, T> atNode,
                Function<Uniform, T> uniform,
                Function<AtPoint, T> atPoint,
                Function<Settlement, T> settlement) {
            return atPoint.apply(this);
        }

        @Override
        public AtPoint times(double factor) {
            return new AtPoint(member, atIn, forceLb.times(factor), momentLbIn.times(factor));
        }
    }

    /** A held direction moves by a given amount: inches, or radians about an axis. */
    record Settlement(String node, Dof dof, double amount) implements Load {
        @Override
        public <T> T match(
                Function<AtNode, T> atNode,
                Function<Uniform, T> uniform,
                Function<AtPoint, T> atPoint,
                Function<Settlement, T> settlement) {
            return settlement.apply(this);
        }

        @Override
        public Settlement times(double factor) {
            return new Settlement(node, dof, amount * factor);
        }
    }
}
