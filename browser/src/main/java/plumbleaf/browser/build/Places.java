package plumbleaf.browser.build;

import java.util.Arrays;
import plumbleaf.browser.packed.Bodies;
import plumbleaf.browser.packed.Imports;
import plumbleaf.browser.packed.ModuleBytes;

/** Where each function of a module stands in it while it is packed. */
final class Places implements Bodies {
    private final int[] functionTypes;
    private final int[] bodies;
    private final int globals;
    private ModuleBytes code = new ModuleBytes(new byte[0], 0);
    private int end = 0;

    Places(byte[][] sections) {
        Imports imports = Imports.of(sections[2]);
        ModuleBytes in = new ModuleBytes(sections[3], 0);
        int imported = imports.functionTypes.length;
        int functions = in.number();
        functionTypes = Arrays.copyOf(imports.functionTypes, imported + functions);
        for (int i = 0; i < functions; i++) functionTypes[imported + i] = in.number();
        in = new ModuleBytes(sections[10], 0);
        in.number();
        bodies = new int[functionTypes.length];
        for (int i = imported; i < bodies.length; i++) {
            bodies[i] = in.at;
            int length = in.number();
            in.at += length;
        }
        globals = imports.globalTypes.length + new ModuleBytes(sections[6], 0).number();
    }

    @Override
    public int functions() {
        return bodies.length;
    }

    @Override
    public int globals() {
        return globals;
    }

    @Override
    public void stand(ModuleBytes at) {
        code = at;
    }

    @Override
    public void are(int functions) {}

    @Override
    public int typeOf(int function) {
        return functionTypes[function];
    }

    @Override
    public void refers(int function) {}

    @Override
    public int[] begin(int function, int[] given) {
        code.at = bodies[function];
        int length = code.number();
        end = code.at + length;
        int[] all = given.clone();
        int groups = code.number();
        for (int i = 0; i < groups; i++) {
            int many = code.number();
            int type = code.valueType();
            int from = all.length;
            all = Arrays.copyOf(all, from + many);
            Arrays.fill(all, from, all.length, type);
        }
        return all;
    }

    @Override
    public void end(int function, int[] locals, int given) {
        if (code.at != end) throw new IllegalStateException("Function " + function + " does not end where it says");
    }
}
