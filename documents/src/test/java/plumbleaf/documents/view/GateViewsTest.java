package plumbleaf.documents.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Overlaps;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Text;
import plumbleaf.documents.plot.svg.SvgPlot;
import plumbleaf.engine.gate.Hand;
import plumbleaf.engine.gate.Swing;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.DisplayUnits;

/** Gate drawings of both hands, several sizes and grades: nothing touches, nothing is lettered too small, hands mirror. */
class GateViewsTest {
    @ParameterizedTest
    @CsvSource({
        "LEFT,IN,MITERED,48,-0.08,1,1",
        "RIGHT,IN,BUTTED,48,-0.08,1,1",
        "LEFT,OUT,BUTTED,36,0.12,0,0",
        "RIGHT,OUT,MITERED,72,0,2,2",
        "LEFT,IN,MITERED,96,-0.2,1,1",
        "RIGHT,IN,MITERED,120,0.15,2,1",
    })
    void labelsNeverTouch(Side hinge, SwingWay way, Joint joint, double clear, double grade, int midRails, int braces)
            throws IOException {
        GateSubject gate = SampleGate.gate(new Hand(hinge, way), joint, clear, grade, midRails, braces);
        Scale scale = Scale.fitting(clear + 60, 130, 7.5, 8);
        String name = "gate-" + hinge.key() + "-" + (int) clear;
        check(GateElevation.shop(gate, scale), name + "-shop");
        check(GateElevation.picture(gate, scale), name + "-picture");
        check(GateElevation.frame(gate, scale), name + "-frame");
        Swing swing = gate.plan().swing().orElseThrow();
        double end = gate.leaf().outline().latchEdge().inches();
        check(SwingPlan.of("G1", swing, end, DisplayUnits.US, Scale.ratio(24)), name + "-swing");
        check(ClearanceCurve.of("G1", swing, 4.5, DisplayUnits.US), name + "-curve");
        check(GatePlanDetail.of(gate, Scale.ratio(12)), name + "-plan");
    }

    @Test
    void theOtherHandIsTheMirrorImage() {
        Drawing left = GateElevation.frame(
                SampleGate.gate(new Hand(Side.LEFT, SwingWay.IN), Joint.MITERED, 48, -0.08, 1, 1), Scale.ratio(16));
        Drawing right = GateElevation.frame(
                SampleGate.gate(new Hand(Side.RIGHT, SwingWay.IN), Joint.MITERED, 48, 0.08, 1, 1), Scale.ratio(16));
        assertThat(left.frame().minX()).isCloseTo(-right.frame().maxX(), org.assertj.core.api.Assertions.within(1e-6));
        assertThat(left.frame().maxY()).isCloseTo(right.frame().maxY(), org.assertj.core.api.Assertions.within(1e-6));
    }

    private static void check(Drawing drawing, String name) throws IOException {
        Path folder = Path.of("target", "samples");
        Files.createDirectories(folder);
        Files.write(folder.resolve(name + ".svg"), SvgPlot.file(drawing).getBytes(StandardCharsets.UTF_8));
        assertThat(Overlaps.of(drawing)).as(name).isEmpty();
        drawing.primitives().stream()
                .filter(Text.class::isInstance)
                .map(Text.class::cast)
                .forEach(text -> assertThat(text.heightIn()).isGreaterThanOrEqualTo(Text.SMALL));
    }
}
