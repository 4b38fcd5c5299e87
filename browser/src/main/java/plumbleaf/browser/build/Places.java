package plumbleaf.browser.build;

import java.util.Arrays;
import plumbleaf.browser.packed.Bodies;
import plumbleaf.browser.packed.Imports;
import plumbleaf.browser.packed.ModuleBytes;

/** Where each function of a module stands in it while it is packed. */
final class Places implements Bodies {
    private static final int BLOCK = 0x02;
    private static final int THROW = 0x08;
    private static final int END = 0x0B;
    private static final int CALL = 0x10;
    private static final int GET = 0x20;
    private static final int BRANCH_WHERE_THERE = 0xD6;

    private final byte[] all;
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
        all = sections[10];
        in = new ModuleBytes(all, 0);
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
    public boolean checks(int function) {
        int start = bodies[function];
        if (start == 0) return false;
        ModuleBytes body = new ModuleBytes(all, start);
        int size = body.number();
        int end = body.at + size;
        if (body.octet() != 0 || body.octet() != GET || body.octet() != 0 || body.octet() != BLOCK) return false;
        body.number();
        if (body.octet() != BRANCH_WHERE_THERE || body.octet() != 0 || body.octet() != CALL) return false;
        body.number();
        if (body.octet() != THROW) return false;
        body.number();
        boolean blockEnds = body.octet() == END;
        return blockEnds && body.octet() == END && body.at == end;
    }

    @Override
    public void refers(int function) {}

    @Override
    public int[] begin(int function, int[] given) {
        code.at = bodies[function];
        int length = code.number();
        end = code.at + length;
        int[] kinds = given.clone();
        int groups = code.number();
        for (int i = 0; i < groups; i++) {
            int many = code.number();
            int type = code.valueType();
            int from = kinds.length;
            kinds = Arrays.copyOf(kinds, from + many);
            Arrays.fill(kinds, from, kinds.length, type);
        }
        return kinds;
    }

    @Override
    public void end(int function, int[] locals, int given) {
        if (code.at != end) throw new IllegalStateException("Function " + function + " does not end where it says");
    }
}
