package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.web.page.Picture.Handle;

/** What can be taken hold of in the drawings of a job: gates along their run, shots up and down. */
record Handles(DocumentText text, Design design) {
    private static final double INCH = 1;
    private static final double QUARTER_INCH = 0.25;

    /** On an unrolled run. */
    List<Handle> onProfile(RunLayout run) {
        List<Handle> handles = new ArrayList<>();
        int rightward = run.line().insideIsLeft() ? 1 : -1;
        for (int i = 0; i < text.count("gates"); i++) {
            String at = "gates[" + i + "]";
            if (!text.value(at + ".run").orElse("").equals(run.run())) continue;
            String id = text.value(at + ".id").orElse("");
            length(at + ".station")
                    .ifPresent(station -> handles.add(
                            new Handle(id, at + ".station", "Station of gate " + id, "x", rightward, station, INCH)));
        }
        for (int i = 0; i < text.count("ground.shots"); i++) {
            String at = "ground.shots[" + i + "]";
            if (!text.value(at + ".run").orElse("").equals(run.run())) continue;
            height(at).ifPresent(handles::add);
        }
        return handles;
    }

    /** The height of a shot in the form it was taken in: a larger rod reading is lower ground. */
    private Optional<Handle> height(String at) {
        String id = text.value(at + ".id").orElse("");
        for (Form form : Form.values()) {
            Optional<Double> now = length(at + "." + form.key);
            if (now.isPresent())
                return Optional.of(new Handle(
                        id,
                        at + "." + form.key,
                        form.words + " of shot " + id,
                        "y",
                        form.sign,
                        now.get(),
                        QUARTER_INCH));
        }
        return Optional.empty();
    }

    private Optional<Double> length(String path) {
        return text.value(path)
                .flatMap(written -> LengthText.offset(written).value())
                .map(Offset::inches);
    }

    private enum Form {
        ROD("rod", "Rod", -1),
        ELEVATION("elevation", "Elevation", 1),
        FALLS("falls", "Fall", -1),
        RISES("rises", "Rise", 1);

        private final String key;
        private final String words;
        private final int sign;

        Form(String key, String words, int sign) {
            this.key = key;
            this.words = words;
            this.sign = sign;
        }
    }
}
