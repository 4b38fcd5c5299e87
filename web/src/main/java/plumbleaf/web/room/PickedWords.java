package plumbleaf.web.room;

import java.util.List;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.HingeModel;
import plumbleaf.engine.catalogue.RollerModel;
import plumbleaf.engine.design.Hanging;
import plumbleaf.engine.design.PickedGate;
import plumbleaf.engine.job.Bracing;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.section.PostStock;
import plumbleaf.web.page.Choice;

/** A build that a search found, as one says it in the yard: {@code 2 x 2 x 14 ga tube, mitered, one brace; posts 2.875 in. OD sch 40; holes 12", 36" deep}. */
final class PickedWords {
    private final Catalogue catalogue;
    private final DisplayUnits display;

    PickedWords(Catalogue catalogue, DisplayUnits display) {
        this.catalogue = catalogue;
        this.display = display;
    }

    String of(PickedGate build) {
        return build.frame().name() + ", " + word(Choices.JOINTS, build.joint().key()) + ", "
                + braces(build.bracing()) + "; " + posts(build.hingePost(), build.latchPost())
                + "; holes " + display.length(build.hole().diameter()) + ", "
                + display.length(build.hole().depth()) + " deep"
                + build.hanging().map(this::hung).orElse("");
    }

    private static String braces(Bracing bracing) {
        return bracing.diagonals() == 0 ? "no brace" : word(LeafPanels.BRACES, bracing.key());
    }

    private static String posts(PostStock hinge, PostStock latch) {
        return hinge.id().equals(latch.id())
                ? "posts " + hinge.name()
                : "posts " + hinge.name() + " and " + latch.name();
    }

    private String hung(Hanging hanging) {
        String tail = hanging.tail().map(is -> ", tail " + display.length(is)).orElse("");
        String side = hanging.side()
                .map(at -> at == Side.LEFT ? ", hung on the left" : ", hung on the right")
                .orElse("");
        return (hanging.hinge().isEmpty() ? "" : "; " + model(hanging.hinge())) + side + tail;
    }

    private String model(String id) {
        return catalogue
                .hinge(id)
                .map(HingeModel::name)
                .or(() -> catalogue.roller(id).map(RollerModel::name))
                .orElse(id);
    }

    private static String word(List<Choice> choices, String key) {
        return choices.stream()
                .filter(each -> each.value().equals(key))
                .map(Choice::words)
                .findFirst()
                .orElse(key);
    }
}
