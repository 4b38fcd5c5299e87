package plumbleaf.reference.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.documents.PacketSubjects;
import plumbleaf.documents.Papers;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Fill;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Material;
import plumbleaf.documents.drawing.PaperSize;
import plumbleaf.documents.drawing.Primitive;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.design.Design;

/**
 * What a gray copier leaves of the papers. Source: WCAG 2.2, 1.4.3 (text 4.5 : 1) and 1.4.1 (nothing by color alone); relative luminance as
 * WCAG defines it, which is what a gray copy keeps.
 */
class BlackAndWhiteTest {
    private static final double READ = 4.5;
    /** Copiers lose tints that differ by less from white. */
    private static final double TOLD_APART = 1.25;

    private static double part(int value) {
        double share = value / 255.0;
        return share <= 0.04045 ? share / 12.92 : StrictMath.pow((share + 0.055) / 1.055, 2.4);
    }

    private static double light(Ink ink) {
        return 0.2126 * part(ink.red()) + 0.7152 * part(ink.green()) + 0.0722 * part(ink.blue());
    }

    private static double contrast(Ink one, Ink other) {
        double high = Math.max(light(one), light(other));
        double low = Math.min(light(one), light(other));
        return (high + 0.05) / (low + 0.05);
    }

    /** All lettering of two packets, whatever its ink, on the paper and on every tint it may lie on. */
    @ParameterizedTest
    @ValueSource(strings = {"nursery-lane.json", "fallow-gate.json"})
    void everyWordIsReadOnAGrayCopy(String example) throws IOException {
        Design design = PaperTrial.design(PaperTrial.example(example));
        List<String> faint = new ArrayList<>();
        for (Drawing page : Papers.pages(
                PacketSubjects.of(design.job(), design, PaperTrial.options(PaperSize.LETTER, PaperSize.TABLOID))))
            for (Primitive part : page.primitives())
                if (part instanceof Text words && contrast(words.look().ink(), Ink.PAPER) < READ)
                    faint.add(page.name() + ": " + words.text() + " in "
                            + words.look().ink());
        assertThat(faint).isEmpty();
    }

    /** A material is told by its hatch; two without one differ in gray, or are never cut beside each other. */
    @ParameterizedTest
    @EnumSource(Material.class)
    void everyMaterialIsToldWithoutItsTint(Material material) {
        for (Material other : Material.values()) {
            if (other == material) continue;
            boolean byHatch = marks(material) != marks(other);
            boolean byGray = contrast(material.tint(), other.tint()) >= TOLD_APART;
            boolean faces = isFace(material) && isFace(other);
            assertThat(byHatch || byGray || faces)
                    .as(material + " beside " + other)
                    .isTrue();
        }
    }

    /** Faces that are only ever seen, never cut, and that their outline and their name tell apart. */
    private static boolean isFace(Material material) {
        return material == Material.STEEL_FACE
                || material == Material.GATE_FACE
                || material == Material.SHADE
                || material == Material.CLEAR;
    }

    /** How many strokes and dots fill a square foot of it: its hatch by number, which no two share. */
    private static long marks(Material material) {
        Look look = Look.thin(Layer.HATCH);
        return Area.plain(new Box(0, 0, 12, 12).corners(), material, look).drawn(new Scale(4, "")).stream()
                .filter(part -> !(part instanceof Fill))
                .mapToLong(part -> part.extents(new Scale(4, "")).isNothing()
                        ? 0
                        : 1 + part.toString().length())
                .sum();
    }

    /** Buried lines carry the letter of their color beside the color. */
    @Test
    void aBuriedLineIsToldByItsLetter() throws IOException {
        Design design = PaperTrial.design(PaperTrial.example("kiln-yard.json"));
        Drawing plan = Papers.pages(PacketSubjects.of(
                        design.job(), design, PaperTrial.options(PaperSize.LETTER, PaperSize.TABLOID)))
                .get(0);
        assertThat(plan.primitives())
                .anyMatch(part -> part instanceof Text words
                        && words.look().ink() == Ink.WATER
                        && words.text().startsWith("W"));
    }
}
