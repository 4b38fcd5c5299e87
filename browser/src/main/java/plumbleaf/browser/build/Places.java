package plumbleaf.browser.build;

import java.util.Arrays;

/** Where each function and each global of a module stands in it, those imported first. */
final class Places {
    private static final int FUNCTION = 0;
    private static final int GLOBAL = 3;

    final int importedFunctions;
    final int importedGlobals;

    /** Each function's. */
    final int[] functionTypes;

    /** Those of the imported ones; the others' stand with them. */
    final int[] globalTypes;

    final int[] bodies;
    final int[] globals;

    private Places(
            int importedFunctions,
            int importedGlobals,
            int[] functionTypes,
            int[] globalTypes,
            int[] bodies,
            int[] globals) {
        this.importedFunctions = importedFunctions;
        this.importedGlobals = importedGlobals;
        this.functionTypes = functionTypes;
        this.globalTypes = globalTypes;
        this.bodies = bodies;
        this.globals = globals;
    }

    /** @param from where each section of the module begins */
    static Places of(byte[] module, int[] from) {
        ModuleBytes in = new ModuleBytes(module, from[2]);
        int[] functionTypes = new int[0];
        int[] globalTypes = new int[0];
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
        int importedFunctions = functionTypes.length;
        int importedGlobals = globalTypes.length;
        in.at = from[3];
        int functions = in.number();
        functionTypes = Arrays.copyOf(functionTypes, importedFunctions + functions);
        for (int i = 0; i < functions; i++) functionTypes[importedFunctions + i] = in.number();
        in.at = from[10];
        in.number();
        int[] bodies = new int[functionTypes.length];
        for (int i = importedFunctions; i < bodies.length; i++) {
            bodies[i] = in.at;
            int length = in.number();
            in.at += length;
        }
        in.at = from[6];
        int[] globals = new int[importedGlobals + in.number()];
        for (int i = importedGlobals; i < globals.length; i++) {
            globals[i] = in.at;
            in.valueType();
            in.octet();
            skip(in);
        }
        return new Places(
                importedFunctions,
                importedGlobals,
                functionTypes,
                Arrays.copyOf(globalTypes, globals.length),
                bodies,
                globals);
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

    /** What a global begins with: constants, and objects made of them. */
    private static void skip(ModuleBytes in) {
        for (int op = in.octet(); op != 0x0B; op = in.octet()) {
            switch (op) {
                case 0xFB -> {
                    int way = in.octet();
                    in.number();
                    if (way == 8) in.number();
                }
                case 0x23, 0x41, 0x42, 0xD0, 0xD2 -> {
                    int octet = in.octet();
                    while (octet > 127) octet = in.octet();
                }
                case 0x43 -> in.at += 4;
                case 0x44 -> in.at += 8;
                default -> throw new IllegalStateException("A global begins with instruction " + op);
            }
        }
    }
}
