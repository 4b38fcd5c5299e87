package plumbleaf.documents.mark;

import java.awt.BasicStroke;
import java.awt.Color;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.w3c.dom.Element;

/** With what a shape is painted; what an element does not say itself it has from the one above it. */
record SvgPaint(
        Optional<Color> fill,
        Optional<Color> stroke,
        double width,
        double fillShare,
        double strokeShare,
        int cap,
        int join,
        boolean evenOdd,
        String problem) {
    static final SvgPaint FIRST = new SvgPaint(
            Optional.of(Color.BLACK),
            Optional.empty(),
            1,
            1,
            1,
            BasicStroke.CAP_BUTT,
            BasicStroke.JOIN_MITER,
            false,
            "");

    private static final Map<String, Color> NAMED = named();

    private static Map<String, Color> named() {
        Map<String, Color> names = new LinkedHashMap<>();
        names.put("black", Color.BLACK);
        names.put("currentcolor", Color.BLACK);
        names.put("white", Color.WHITE);
        names.put("red", Color.RED);
        names.put("green", new Color(0, 128, 0));
        names.put("blue", Color.BLUE);
        names.put("gray", new Color(128, 128, 128));
        names.put("grey", new Color(128, 128, 128));
        names.put("silver", new Color(192, 192, 192));
        names.put("navy", new Color(0, 0, 128));
        names.put("maroon", new Color(128, 0, 0));
        names.put("olive", new Color(128, 128, 0));
        names.put("teal", new Color(0, 128, 128));
        names.put("purple", new Color(128, 0, 128));
        names.put("orange", new Color(255, 165, 0));
        names.put("brown", new Color(165, 42, 42));
        names.put("yellow", Color.YELLOW);
        return names;
    }

    SvgPaint with(Element element) {
        Map<String, String> says = says(element);
        Said fills = paint(says.get("fill"), fill);
        Said strokes = paint(says.get("stroke"), stroke);
        double all = share(says.get("opacity"));
        String cap = says.getOrDefault("stroke-linecap", "");
        String join = says.getOrDefault("stroke-linejoin", "");
        String rule = says.getOrDefault("fill-rule", "");
        String wrong = fills.problem.isEmpty() ? strokes.problem : fills.problem;
        for (String asked : new String[] {"filter", "mask", "clip-path"})
            if (says.containsKey(asked) && !says.getOrDefault(asked, "").equals("none"))
                wrong = "the SVG uses " + asked + ", which is not read here: flatten it, or bring a PNG";
        if (element.hasAttribute("class"))
            wrong =
                    "the SVG paints by class, which is not read here: save it with presentation attributes, or bring a PNG";
        return new SvgPaint(
                fills.color,
                strokes.color,
                says.containsKey("stroke-width") ? number(says.getOrDefault("stroke-width", "1")) : width,
                fillShare * all * share(says.get("fill-opacity")),
                strokeShare * all * share(says.get("stroke-opacity")),
                cap.isEmpty() ? this.cap : cap(cap),
                join.isEmpty() ? this.join : join(join),
                rule.isEmpty() ? evenOdd : rule.equals("evenodd"),
                problem.isEmpty() ? wrong : problem);
    }

    /** Attributes, and over them what a style attribute says. */
    private static Map<String, String> says(Element element) {
        Map<String, String> says = new LinkedHashMap<>();
        for (String name : new String[] {
            "fill",
            "stroke",
            "stroke-width",
            "opacity",
            "fill-opacity",
            "stroke-opacity",
            "stroke-linecap",
            "stroke-linejoin",
            "fill-rule",
            "filter",
            "mask",
            "clip-path"
        })
            if (element.hasAttribute(name))
                says.put(name, element.getAttribute(name).strip());
        for (String part : element.getAttribute("style").split(";", -1)) {
            int colon = part.indexOf(':');
            if (colon > 0)
                says.put(
                        part.substring(0, colon).strip().toLowerCase(Locale.ROOT),
                        part.substring(colon + 1).strip());
        }
        return says;
    }

    private record Said(Optional<Color> color, String problem) {}

    private static Said paint(@org.jspecify.annotations.Nullable String text, Optional<Color> above) {
        if (text == null || text.equals("inherit")) return new Said(above, "");
        if (text.equals("none") || text.equals("transparent")) return new Said(Optional.empty(), "");
        String plain = text.toLowerCase(Locale.ROOT);
        Color named = NAMED.get(plain);
        if (named != null) return new Said(Optional.of(named), "");
        if (plain.matches("#[0-9a-f]{6}"))
            return new Said(Optional.of(new Color(Integer.parseInt(plain.substring(1), 16))), "");
        if (plain.matches("#[0-9a-f]{3}")) {
            StringBuilder twice = new StringBuilder();
            for (char each : plain.substring(1).toCharArray())
                twice.append(each).append(each);
            return new Said(Optional.of(new Color(Integer.parseInt(twice.toString(), 16))), "");
        }
        if (plain.matches("rgb\\( *\\d{1,3} *, *\\d{1,3} *, *\\d{1,3} *\\)")) {
            double[] parts = SvgPath.numbers(plain.substring(4, plain.length() - 1), 3);
            return new Said(
                    Optional.of(new Color((int) Math.min(255, parts[0]), (int) Math.min(255, parts[1]), (int)
                            Math.min(255, parts[2]))),
                    "");
        }
        return new Said(
                above, "the SVG paints with \"" + text + "\": use plain colors such as #1f5fa8, or bring a PNG");
    }

    private static double share(@org.jspecify.annotations.Nullable String text) {
        if (text == null) return 1;
        return Math.max(0, Math.min(1, number(text)));
    }

    private static double number(String text) {
        return Double.parseDouble(text.replaceFirst("(px|pt|mm)$", "").strip());
    }

    private static int cap(String word) {
        return switch (word) {
            case "round" -> BasicStroke.CAP_ROUND;
            case "square" -> BasicStroke.CAP_SQUARE;
            default -> BasicStroke.CAP_BUTT;
        };
    }

    private static int join(String word) {
        return switch (word) {
            case "round" -> BasicStroke.JOIN_ROUND;
            case "bevel" -> BasicStroke.JOIN_BEVEL;
            default -> BasicStroke.JOIN_MITER;
        };
    }
}
