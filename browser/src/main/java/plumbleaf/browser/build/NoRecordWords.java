package plumbleaf.browser.build;

import java.util.Set;
import org.teavm.model.ClassHolder;
import org.teavm.model.ClassHolderTransformer;
import org.teavm.model.ClassHolderTransformerContext;
import org.teavm.model.MethodDescriptor;
import org.teavm.model.MethodHolder;
import org.teavm.model.emit.ProgramEmitter;

/** Records keep no {@code toString} in the module, and nothing says the name of its class: nobody prints one, and a thousand of them are a tenth of its size. */
public final class NoRecordWords implements ClassHolderTransformer {
    private static final MethodDescriptor TO_STRING = new MethodDescriptor("toString", String.class);
    private static final Set<String> NAMED_BY_CLASS = Set.of("java.lang.Object", "java.lang.Throwable");

    @Override
    public void transformClass(ClassHolder one, ClassHolderTransformerContext context) {
        MethodHolder words = one.getMethod(TO_STRING);
        if (words == null) return;
        if ("java.lang.Record".equals(one.getParent()) && one.getName().startsWith("plumbleaf."))
            one.removeMethod(words);
        else if (NAMED_BY_CLASS.contains(one.getName())) {
            ProgramEmitter body = ProgramEmitter.create(words, context.getHierarchy());
            body.constant("").returnValue();
        }
    }
}
