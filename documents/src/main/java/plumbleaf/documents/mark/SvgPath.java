package plumbleaf.documents.mark;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Arc2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.w3c.dom.Element;

/** The shapes of SVG 1.1 and their transforms as the platform's own shapes. Source: SVG 1.1, chapters 7.6, 8, 9 and appendix F.6. */
final class SvgPath {
    private static final Pattern NUMBER = Pattern.compile("[-+]?(\\d+\\.?\\d*|\\.\\d+)([eE][-+]?\\d+)?");
    private static final Pattern TRANSFORM = Pattern.compile("([a-zA-Z]+)\\s*\\(([^)]*)\\)");

    private final String text;
    private final Path2D.Double path;
    private int at;
    private double x;
    private double y;
    private double startX;
    private double startY;
    private double handleX;
    private double handleY;
    private char before = ' ';

    private SvgPath(String text, boolean evenOdd) {
        this.text = text;
        this.path = new Path2D.Double(evenOdd ? Path2D.WIND_EVEN_ODD : Path2D.WIND_NON_ZERO);
    }

    /** Empty where the element is no shape. */
    static Optional<Shape> shape(Element element, boolean evenOdd) {
        return switch (element.getLocalName()) {
            case "path" -> Optional.of(new SvgPath(element.getAttribute("d"), evenOdd).walked());
            case "polygon" -> Optional.of(corners(element, true, evenOdd));
            case "polyline" -> Optional.of(corners(element, false, evenOdd));
            case "line" ->
                Optional.of(new Line2D.Double(
                        size(element, "x1"), size(element, "y1"), size(element, "x2"), size(element, "y2")));
            case "circle" -> {
                double r = size(element, "r");
                yield Optional.of(new Ellipse2D.Double(size(element, "cx") - r, size(element, "cy") - r, 2 * r, 2 * r));
            }
            case "ellipse" -> {
                double rx = size(element, "rx");
                double ry = size(element, "ry");
                yield Optional.of(
                        new Ellipse2D.Double(size(element, "cx") - rx, size(element, "cy") - ry, 2 * rx, 2 * ry));
            }
            case "rect" -> {
                double rx = element.hasAttribute("rx") ? size(element, "rx") : size(element, "ry");
                double ry = element.hasAttribute("ry") ? size(element, "ry") : rx;
                yield Optional.of(new RoundRectangle2D.Double(
                        size(element, "x"),
                        size(element, "y"),
                        size(element, "width"),
                        size(element, "height"),
                        2 * rx,
                        2 * ry));
            }
            default -> Optional.empty();
        };
    }

    private static double size(Element element, String name) {
        String text = element.getAttribute(name).strip().replaceFirst("px$", "");
        return text.isEmpty() ? 0 : Double.parseDouble(text);
    }

    /** Exactly so many numbers, in any spacing. */
    static double[] numbers(String text, int count) {
        Matcher matcher = NUMBER.matcher(text);
        double[] found = new double[count];
        for (int i = 0; i < count; i++) {
            if (!matcher.find()) throw new NumberFormatException("a number is missing in " + text);
            found[i] = Double.parseDouble(matcher.group());
        }
        return found;
    }

    private static int count(String text) {
        return (int) NUMBER.matcher(text).results().count();
    }

    private static Shape corners(Element element, boolean closed, boolean evenOdd) {
        String text = element.getAttribute("points");
        double[] places = numbers(text, count(text) / 2 * 2);
        Path2D.Double path = new Path2D.Double(evenOdd ? Path2D.WIND_EVEN_ODD : Path2D.WIND_NON_ZERO);
        for (int i = 0; i + 1 < places.length; i += 2) {
            if (i == 0) path.moveTo(places[0], places[1]);
            else path.lineTo(places[i], places[i + 1]);
        }
        if (closed && places.length > 0) path.closePath();
        return path;
    }

    static AffineTransform transform(String text) {
        AffineTransform all = new AffineTransform();
        Matcher each = TRANSFORM.matcher(text);
        while (each.find()) {
            String inside = each.group(2);
            int count = count(inside);
            double[] of = numbers(inside, count);
            all.concatenate(
                    switch (each.group(1)) {
                        case "translate" -> AffineTransform.getTranslateInstance(of[0], count > 1 ? of[1] : 0);
                        case "scale" -> AffineTransform.getScaleInstance(of[0], count > 1 ? of[1] : of[0]);
                        case "rotate" ->
                            count > 2
                                    ? AffineTransform.getRotateInstance(Math.toRadians(of[0]), of[1], of[2])
                                    : AffineTransform.getRotateInstance(Math.toRadians(of[0]));
                        case "skewX" -> AffineTransform.getShearInstance(StrictMath.tan(Math.toRadians(of[0])), 0);
                        case "skewY" -> AffineTransform.getShearInstance(0, StrictMath.tan(Math.toRadians(of[0])));
                        case "matrix" -> new AffineTransform(of);
                        default -> throw new NumberFormatException("transform " + each.group(1));
                    });
        }
        return all;
    }

    private Shape walked() {
        char command = ' ';
        while (skip()) {
            char here = text.charAt(at);
            if (Character.isLetter(here)) {
                command = here;
                at++;
            } else if (command == 'M') {
                command = 'L';
            } else if (command == 'm') {
                command = 'l';
            }
            step(command);
        }
        return path;
    }

    private boolean skip() {
        while (at < text.length() && (Character.isWhitespace(text.charAt(at)) || text.charAt(at) == ',')) at++;
        return at < text.length();
    }

    private double number() {
        skip();
        Matcher matcher = NUMBER.matcher(text).region(at, text.length());
        if (!matcher.lookingAt()) throw new NumberFormatException("a number is missing at " + at);
        at = matcher.end();
        return Double.parseDouble(matcher.group());
    }

    /** A flag of an arc is one digit and needs no gap after it. */
    private boolean flag() {
        skip();
        if (at >= text.length()) throw new NumberFormatException("a flag is missing");
        char digit = text.charAt(at++);
        if (digit != '0' && digit != '1') throw new NumberFormatException("a flag is 0 or 1");
        return digit == '1';
    }

    private void step(char command) {
        boolean relative = Character.isLowerCase(command);
        double fromX = relative ? x : 0;
        double fromY = relative ? y : 0;
        char kind = Character.toUpperCase(command);
        switch (kind) {
            case 'M' -> {
                to(fromX + number(), fromY + number());
                path.moveTo(x, y);
                startX = x;
                startY = y;
            }
            case 'L' -> line(fromX + number(), fromY + number());
            case 'H' -> line(fromX + number(), y);
            case 'V' -> line(x, fromY + number());
            case 'C' ->
                cubic(
                        fromX + number(),
                        fromY + number(),
                        fromX + number(),
                        fromY + number(),
                        fromX + number(),
                        fromY + number());
            case 'S' -> {
                boolean smooth = before == 'C' || before == 'S';
                double firstX = smooth ? 2 * x - handleX : x;
                double firstY = smooth ? 2 * y - handleY : y;
                cubic(firstX, firstY, fromX + number(), fromY + number(), fromX + number(), fromY + number());
            }
            case 'Q' -> quad(fromX + number(), fromY + number(), fromX + number(), fromY + number());
            case 'T' -> {
                boolean smooth = before == 'Q' || before == 'T';
                quad(smooth ? 2 * x - handleX : x, smooth ? 2 * y - handleY : y, fromX + number(), fromY + number());
            }
            case 'A' -> arc(number(), number(), number(), flag(), flag(), fromX + number(), fromY + number());
            case 'Z' -> {
                path.closePath();
                to(startX, startY);
            }
            default -> throw new NumberFormatException("command " + command);
        }
        before = kind;
    }

    private void to(double nextX, double nextY) {
        x = nextX;
        y = nextY;
    }

    private void line(double nextX, double nextY) {
        path.lineTo(nextX, nextY);
        to(nextX, nextY);
    }

    private void cubic(double aX, double aY, double bX, double bY, double nextX, double nextY) {
        path.curveTo(aX, aY, bX, bY, nextX, nextY);
        handleX = bX;
        handleY = bY;
        to(nextX, nextY);
    }

    private void quad(double aX, double aY, double nextX, double nextY) {
        path.quadTo(aX, aY, nextX, nextY);
        handleX = aX;
        handleY = aY;
        to(nextX, nextY);
    }

    /** From its ends to its center: appendix F.6.5 of the recommendation. */
    private void arc(
            double rxIn, double ryIn, double degrees, boolean large, boolean sweep, double nextX, double nextY) {
        double rx = Math.abs(rxIn);
        double ry = Math.abs(ryIn);
        if (rx == 0 || ry == 0 || (nextX == x && nextY == y)) {
            line(nextX, nextY);
            return;
        }
        double turn = Math.toRadians(degrees);
        double cos = StrictMath.cos(turn);
        double sin = StrictMath.sin(turn);
        double halfX = (x - nextX) / 2;
        double halfY = (y - nextY) / 2;
        double px = cos * halfX + sin * halfY;
        double py = -sin * halfX + cos * halfY;
        double over = px * px / (rx * rx) + py * py / (ry * ry);
        if (over > 1) {
            rx *= Math.sqrt(over);
            ry *= Math.sqrt(over);
        }
        double under = rx * rx * py * py + ry * ry * px * px;
        double root = Math.sqrt(Math.max(0, (rx * rx * ry * ry - under) / under)) * (large == sweep ? -1 : 1);
        double cxIn = root * rx * py / ry;
        double cyIn = -root * ry * px / rx;
        double start = Math.toDegrees(StrictMath.atan2((py - cyIn) / ry, (px - cxIn) / rx));
        double end = Math.toDegrees(StrictMath.atan2((-py - cyIn) / ry, (-px - cxIn) / rx));
        double extent = end - start;
        if (sweep && extent < 0) extent += 360;
        if (!sweep && extent > 0) extent -= 360;
        AffineTransform place = AffineTransform.getTranslateInstance((x + nextX) / 2, (y + nextY) / 2);
        place.rotate(turn);
        place.translate(cxIn, cyIn);
        // The platform measures arcs the other way round, y down.
        path.append(
                place.createTransformedShape(new Arc2D.Double(-rx, -ry, 2 * rx, 2 * ry, -start, -extent, Arc2D.OPEN)),
                true);
        to(nextX, nextY);
    }
}
