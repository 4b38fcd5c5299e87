package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.job.SwingWay;

/** On which side a leaf hangs and which way it swings, as someone outside sees it who faces the closed gate. */
public record Hand(Side hinge, SwingWay swing) {
    private static final List<Hand> ALL = List.of(
            new Hand(Side.LEFT, SwingWay.IN),
            new Hand(Side.LEFT, SwingWay.OUT),
            new Hand(Side.RIGHT, SwingWay.IN),
            new Hand(Side.RIGHT, SwingWay.OUT));

    /** The four there are, in a fixed order. */
    public static List<Hand> all() {
        return ALL;
    }

    /** Those that agree with what was said: one when both sides were said, up to four when nothing was. */
    public static List<Hand> agreeing(Stated<Side> hinge, Stated<SwingWay> swing) {
        List<Hand> agreeing = new ArrayList<>();
        for (Hand hand : ALL) {
            if (hinge.or(hand.hinge) == hand.hinge && swing.or(hand.swing) == hand.swing) agreeing.add(hand);
        }
        return List.copyOf(agreeing);
    }

    /** The one sentence for the hand, the same on every screen and paper: {@code Seen from outside: hinges on the right, swings in}. */
    public String sentence() {
        return "Seen from outside: hinges on the " + hinge.key() + ", swings " + swing.key();
    }

    public Hand otherHinge() {
        return new Hand(hinge.other(), swing);
    }

    public Hand otherSwing() {
        return new Hand(hinge, swing.other());
    }
}
