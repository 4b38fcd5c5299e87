package plumbleaf.documents.plot.svg;

import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.engine.quantity.DecimalText;

/** The style sheet for our drawings, the same for all of them, light and dark. */
public final class SvgStyle {
    private static final double PER_INCH = SvgPlot.UNITS_PER_INCH;

    private SvgStyle() {}

    /** Rules for drawings within a page: dark by the reader's system unless {@code data-theme} on the root says light or dark. */
    public static String forPages() {
        return common()
                + inks(".plot", false)
                + "@media (prefers-color-scheme: dark){" + inks(":root:not([data-theme=light]) .plot", true) + "}\n"
                + inks(":root[data-theme=dark] .plot", true);
    }

    /** Rules for a file of its own: paper stays white, as it is printed. */
    static String forFile() {
        return common() + inks(".plot", false);
    }

    private static String common() {
        StringBuilder css = new StringBuilder(1024);
        css.append(".plot path,.plot circle{fill:none;stroke-linecap:butt;stroke-linejoin:round}\n");
        css.append(".plot text{font-family:Inter,\"DejaVu Sans\",sans-serif;font-weight:400;font-kerning:none;"
                + "white-space:pre;stroke:none}\n");
        css.append(".plot .b{font-weight:600}\n.plot .dot{stroke-linecap:round}\n");
        for (LineKind kind : LineKind.values()) {
            css.append(".plot .k-").append(kind.key()).append("{stroke-width:");
            css.append(DecimalText.upTo(kind.widthIn() * PER_INCH, 3));
            if (!kind.dashesIn().isEmpty()) {
                css.append(";stroke-dasharray:");
                for (int i = 0; i < kind.dashesIn().size(); i++)
                    css.append(i == 0 ? "" : " ")
                            .append(DecimalText.upTo(kind.dashesIn().get(i) * PER_INCH, 2));
            }
            css.append("}\n");
        }
        return css.toString();
    }

    private static String inks(String root, boolean dark) {
        StringBuilder css = new StringBuilder(2048);
        for (Ink ink : Ink.values()) {
            String colour = dark ? ink.onDark() : ink.onWhite();
            css.append(root)
                    .append(" .s-")
                    .append(ink.key())
                    .append("{stroke:")
                    .append(colour)
                    .append("}");
            css.append(root)
                    .append(" .f-")
                    .append(ink.key())
                    .append("{fill:")
                    .append(colour)
                    .append("}\n");
        }
        return css.toString();
    }
}
