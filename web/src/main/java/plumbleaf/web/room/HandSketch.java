package plumbleaf.web.room;

/**
 * The one picture of a gate's hand, as one stands outside and looks at the closed gate from above: post, pin, leaf, and the way it
 * swings. Up on the picture is inside.
 */
public record HandSketch(String svg, String words) {
    private static final HandSketch NONE = new HandSketch("", "");

    /** The first gate's hand; nothing before hinge side and swing are both said. */
    static HandSketch of(DocumentText text) {
        String hinge = text.value("gates[0].hinge").orElse("");
        String swing = text.value("gates[0].swing").orElse("");
        boolean known = (hinge.equals("left") || hinge.equals("right")) && (swing.equals("in") || swing.equals("out"));
        return known ? of(hinge.equals("left"), swing.equals("in")) : NONE;
    }

    /** @param left whether the hinges are on the left of someone outside; {@code in} whether it swings away from them */
    public static HandSketch of(boolean left, boolean in) {
        int pin = left ? 8 : 36;
        int latch = left ? 36 : 8;
        String sweep = left == in ? "0" : "1";
        String svg = "<svg viewBox=\"0 0 44 28\" aria-hidden=\"true\">"
                + "<path d=\"M2 14H" + Math.min(pin, latch) + "M" + Math.max(pin, latch) + " 14H42\"/>"
                + "<path d=\"M" + pin + " 14H" + latch + "\" stroke-width=\"2.2\"/>"
                + "<path class=\"swing\" d=\"M" + latch + " 14A28 28 0 0 " + sweep + " " + (left ? 32.8 : 11.2) + " "
                + (in ? 1 : 27) + "\"/>"
                + "<path class=\"swing\" d=\"M" + pin + " 14 " + (left ? 32.8 : 11.2) + " " + (in ? 1 : 27) + "\"/>"
                + "<circle class=\"pin\" cx=\"" + pin + "\" cy=\"14\" r=\"2.2\"/></svg>";
        String words = "from outside: hinge " + (left ? "left" : "right") + ", swings " + (in ? "in" : "out");
        return new HandSketch(svg, words);
    }
}
