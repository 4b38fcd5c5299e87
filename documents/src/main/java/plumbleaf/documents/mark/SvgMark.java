package plumbleaf.documents.mark;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/**
 * An SVG of plain shapes in plain colors, drawn to pixels: groups, paths, rectangles, circles, ellipses, lines, polygons. Lettering,
 * shading, styles, scripts, pictures and anything from elsewhere are refused by name, so that nothing is left out in silence.
 * Source: SVG 1.1, W3C recommendation, chapters 7 to 11.
 */
final class SvgMark {
    private static final Set<String> SAID_BY_NOBODY = Set.of("title", "desc", "metadata", "defs");

    private final Graphics2D pen;

    private SvgMark(Graphics2D pen) {
        this.pen = pen;
    }

    /** A picture, or why there is none. */
    record Read(Optional<BufferedImage> picture, String problem) {
        <T> T match(Function<BufferedImage, T> is, Function<String, T> refused) {
            return picture.map(is).orElseGet(() -> refused.apply(problem));
        }
    }

    /** What stops a reading, with the words for whoever brought the file. */
    private static final class NotPlain extends Exception {
        private static final long serialVersionUID = 1;

        NotPlain(String words) {
            super(words);
        }
    }

    static boolean isOne(byte[] bytes) {
        String head = new String(bytes, 0, Math.min(bytes.length, 4096), StandardCharsets.UTF_8);
        return head.contains("<svg");
    }

    static Read read(byte[] bytes, int longSide) {
        try {
            return new Read(Optional.of(drawn(root(bytes), longSide)), "");
        } catch (NotPlain refused) {
            return new Read(Optional.empty(), String.valueOf(refused.getMessage()));
        } catch (NumberFormatException notANumber) {
            return new Read(Optional.empty(), "the SVG has a size or place that is not a number");
        }
    }

    private static Element root(byte[] bytes) throws NotPlain {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            factory.setNamespaceAware(true);
            var builder = factory.newDocumentBuilder();
            builder.setErrorHandler(new Quiet());
            return builder.parse(new InputSource(new ByteArrayInputStream(bytes)))
                    .getDocumentElement();
        } catch (SAXException | IOException bad) {
            throw new NotPlain("the SVG cannot be read, or names a document type: save it as plain SVG");
        } catch (ParserConfigurationException absent) {
            throw new IllegalStateException("No parser for XML here", absent);
        }
    }

    /** Says nothing: what is wrong is in the exception. */
    private static final class Quiet implements ErrorHandler {
        @Override
        public void warning(SAXParseException said) {}

        @Override
        public void error(SAXParseException said) {}

        @Override
        public void fatalError(SAXParseException said) throws SAXException {
            throw said;
        }
    }

    private static BufferedImage drawn(Element root, int longSide) throws NotPlain {
        double[] view = view(root);
        if (!(view[2] > 0 && view[3] > 0)) throw new NotPlain("the SVG has no size: it needs a viewBox");
        double factor = longSide / Math.max(view[2], view[3]);
        int wide = (int) Math.max(1, Math.round(view[2] * factor));
        int high = (int) Math.max(1, Math.round(view[3] * factor));
        BufferedImage picture = new BufferedImage(wide, high, BufferedImage.TYPE_INT_ARGB);
        Graphics2D pen = picture.createGraphics();
        pen.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        pen.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        AffineTransform seen = AffineTransform.getScaleInstance(factor, factor);
        seen.translate(-view[0], -view[1]);
        new SvgMark(pen).children(root, seen, SvgPaint.FIRST.with(root));
        pen.dispose();
        return picture;
    }

    private static double[] view(Element root) {
        String box = root.getAttribute("viewBox").strip();
        if (!box.isEmpty()) return SvgPath.numbers(box, 4);
        return new double[] {0, 0, length(root, "width"), length(root, "height")};
    }

    private static double length(Element element, String name) {
        String text = element.getAttribute(name).strip().replaceFirst("(px|pt|mm|cm|in)$", "");
        return text.isEmpty() || text.endsWith("%") ? 0 : Double.parseDouble(text);
    }

    private void children(Element parent, AffineTransform place, SvgPaint paint) throws NotPlain {
        NodeList nodes = parent.getChildNodes();
        for (int i = 0; i < nodes.getLength(); i++)
            if (nodes.item(i).getNodeType() == Node.ELEMENT_NODE) element((Element) nodes.item(i), place, paint);
    }

    private void element(Element element, AffineTransform outer, SvgPaint above) throws NotPlain {
        String space = element.getNamespaceURI();
        boolean foreign = space != null && !space.equals("http://www.w3.org/2000/svg");
        String name = element.getLocalName();
        if (foreign || (SAID_BY_NOBODY.contains(name) && !hasShading(element))) return;
        SvgPaint paint = above.with(element);
        if (!paint.problem().isEmpty()) throw new NotPlain(paint.problem());
        AffineTransform place = new AffineTransform(outer);
        place.concatenate(SvgPath.transform(element.getAttribute("transform")));
        if (name.equals("g") || name.equals("svg")) {
            children(element, place, paint);
            return;
        }
        Optional<Shape> shape = SvgPath.shape(element, paint.evenOdd());
        if (shape.isEmpty())
            throw new NotPlain(
                    "the SVG has <" + name + ">, which is not read here: turn lettering into outlines and shading"
                            + " into plain colors, or bring a PNG");
        paint(shape.get(), place, paint);
    }

    private static boolean hasShading(Element element) {
        return element.getLocalName().equals("defs")
                && (element.getElementsByTagNameNS("*", "style").getLength() > 0);
    }

    private void paint(Shape shape, AffineTransform place, SvgPaint paint) {
        AffineTransform before = pen.getTransform();
        pen.setTransform(place);
        paint.fill().ifPresent(color -> {
            pen.setColor(faded(color, paint.fillShare()));
            pen.fill(shape);
        });
        paint.stroke().ifPresent(color -> {
            pen.setColor(faded(color, paint.strokeShare()));
            pen.setStroke(new BasicStroke((float) paint.width(), paint.cap(), paint.join()));
            pen.draw(shape);
        });
        pen.setTransform(before);
    }

    private static Color faded(Color color, double share) {
        return new Color(color.getRed(), color.getGreen(), color.getBlue(), (int) Math.round(255 * share));
    }
}
