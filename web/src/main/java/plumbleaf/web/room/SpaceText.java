package plumbleaf.web.room;

import plumbleaf.documents.view.SpaceScene;
import tools.jackson.core.JsonGenerator;
import tools.jackson.databind.SerializationContext;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.module.SimpleModule;
import tools.jackson.databind.ser.std.StdSerializer;

/** A scene as the page's script reads it: inches and degrees to the thousandth, which no eye misses. */
final class SpaceText {
    private static final JsonMapper JSON = JsonMapper.builder()
            .addModule(new SimpleModule()
                    .addSerializer(Double.class, new Thousandths())
                    .addSerializer(double.class, new Thousandths()))
            .build();

    private SpaceText() {}

    static String of(SpaceScene scene) {
        return JSON.writeValueAsString(scene);
    }

    private static final class Thousandths extends StdSerializer<Double> {
        Thousandths() {
            super(Double.class);
        }

        @Override
        public void serialize(Double value, JsonGenerator out, SerializationContext context) {
            double rounded = Math.round(value * 1000) / 1000.0;
            if (rounded == Math.rint(rounded)) out.writeNumber((long) rounded);
            else out.writeNumber(rounded);
        }
    }
}
