package plumbleaf.engine.frame;

/** The frame, or a part of it, is free to move: a fault of the model, named by the node that moves most and how. */
public final class UnstableFrame extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    public UnstableFrame(String message) {
        super(message);
    }
}
