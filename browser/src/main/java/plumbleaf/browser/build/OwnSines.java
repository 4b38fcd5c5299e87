package plumbleaf.browser.build;

import java.util.Map;
import org.teavm.model.ClassHolder;
import org.teavm.model.ClassHolderTransformer;
import org.teavm.model.ClassHolderTransformerContext;
import org.teavm.model.MethodDescriptor;
import org.teavm.model.MethodHolder;
import org.teavm.model.emit.ProgramEmitter;
import org.teavm.model.emit.ValueEmitter;
import plumbleaf.browser.Sines;

/** In the module {@link StrictMath} has the sine and cosine of {@link Sines}; the compiler's class library would ask the browser for its own. */
public final class OwnSines implements ClassHolderTransformer {
    private static final Map<String, MethodDescriptor> OWN = Map.of(
            "sin", new MethodDescriptor("sin", double.class, double.class),
            "cos", new MethodDescriptor("cos", double.class, double.class));

    @Override
    public void transformClass(ClassHolder one, ClassHolderTransformerContext context) {
        if (!one.getName().equals("java.lang.StrictMath")) return;
        OWN.forEach((name, descriptor) -> {
            MethodHolder method = one.getMethod(descriptor);
            ProgramEmitter body = ProgramEmitter.create(method, context.getHierarchy());
            ValueEmitter angle = body.var(1, double.class);
            body.invoke(Sines.class, name, double.class, angle).returnValue();
        });
    }
}
