package plumbleaf.browser.packed;

import java.util.Arrays;

/** The types of the functions and globals that a module imports. */
public final class Imports {
    private static final int FUNCTION = 0;
    private static final int GLOBAL = 3;

    public final int[] functionTypes;
    public final int[] globalTypes;

    private Imports(int[] functionTypes, int[] globalTypes) {
        this.functionTypes = functionTypes;
        this.globalTypes = globalTypes;
    }

    /** @param section the module's second section */
    public static Imports of(byte[] section) {
        ModuleBytes in = new ModuleBytes(section, 0);
        int[] functionTypes = {};
        int[] globalTypes = {};
        int imports = in.number();
        for (int i = 0; i < imports; i++) {
            word(in);
            word(in);
            int kind = in.octet();
            if (kind == FUNCTION) functionTypes = with(functionTypes, in.number());
            else if (kind == GLOBAL) {
                globalTypes = with(globalTypes, in.valueType());
                in.octet();
            } else memory(in);
        }
        return new Imports(functionTypes, globalTypes);
    }

    int functions() {
        return functionTypes.length;
    }

    int globals() {
        return globalTypes.length;
    }

    private static void memory(ModuleBytes in) {
        int limits = in.octet();
        in.number();
        if ((limits & 1) != 0) in.number();
    }

    private static int[] with(int[] all, int one) {
        int[] more = Arrays.copyOf(all, all.length + 1);
        more[all.length] = one;
        return more;
    }

    private static void word(ModuleBytes in) {
        int length = in.number();
        in.at += length;
    }
}
