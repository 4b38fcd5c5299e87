package plumbleaf.browser.build;

import org.teavm.model.ClassHolder;
import org.teavm.model.ClassHolderTransformer;
import org.teavm.model.ClassHolderTransformerContext;
import org.teavm.model.MethodDescriptor;
import org.teavm.model.MethodHolder;

/** Records keep no {@code toString} in the module: nothing prints one, and a thousand of them are a tenth of its size. */
public final class NoRecordWords implements ClassHolderTransformer {
    private static final MethodDescriptor TO_STRING = new MethodDescriptor("toString", String.class);

    @Override
    public void transformClass(ClassHolder one, ClassHolderTransformerContext context) {
        if (!"java.lang.Record".equals(one.getParent()) || !one.getName().startsWith("plumbleaf.")) return;
        MethodHolder words = one.getMethod(TO_STRING);
        if (words != null) one.removeMethod(words);
    }
}
