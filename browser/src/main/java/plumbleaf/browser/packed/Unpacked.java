package plumbleaf.browser.packed;

/** A module put together again. */
public final class Unpacked {
    private static final int HEAD = 8;
    private static final int FUNCTIONS = 3;
    private static final int REFERRED = 9;

    private final byte[][] sections = new byte[PackedModule.SECTIONS][0];
    private final MadeBodies bodies = new MadeBodies();
    private final ModuleBytes out;

    private Unpacked(byte[] packed) {
        Odds odds = new Odds(packed);
        int size = PackedModule.tellSize(odds, 0);
        int[] types = PackedModule.tell(odds, sections, bodies);
        int imported = Imports.of(sections[PackedModule.IMPORTS]).functions();
        out = new ModuleBytes(new byte[size], 0);
        byte[] head = {0, 'a', 's', 'm', 1, 0, 0, 0};
        out.putAll(head, 0, HEAD);
        section(PackedModule.TYPES);
        section(PackedModule.IMPORTS);
        functions(types, imported);
        section(4);
        section(13);
        section(PackedModule.GLOBALS);
        section(7);
        section(8);
        referred(types.length);
        code(types.length, imported);
        section(PackedModule.WORDS);
        section(0);
    }

    /** @param packed whole, as its sum says; of anything else what comes is nonsense, or a fault */
    public static byte[] of(byte[] packed) {
        return new Unpacked(packed).out.all();
    }

    private void section(int id) {
        byte[] all = sections[id];
        if (all.length == 0) return;
        out.put(id);
        out.putNumber(all.length);
        out.putAll(all, 0, all.length);
    }

    private void functions(int[] types, int imported) {
        ModuleBytes own = new ModuleBytes(new byte[5 + 5 * types.length], 0);
        own.putNumber(types.length - imported);
        for (int f = imported; f < types.length; f++) own.putNumber(types[f]);
        section(FUNCTIONS, own);
    }

    private void referred(int functions) {
        ModuleBytes own = new ModuleBytes(new byte[8 + 5 * functions], 0);
        int many = 0;
        for (int f = 0; f < functions; f++) if (bodies.isReferred(f)) many++;
        own.put(1);
        own.put(3);
        own.put(0);
        own.putNumber(many);
        for (int f = 0; f < functions; f++) if (bodies.isReferred(f)) own.putNumber(f);
        section(REFERRED, own);
    }

    private void section(int id, ModuleBytes own) {
        out.put(id);
        out.putNumber(own.at);
        out.putAll(own.all(), 0, own.at);
    }

    private void code(int functions, int imported) {
        byte[] all = sections[PackedModule.CODE];
        out.put(PackedModule.CODE);
        out.putWide(all.length);
        out.putNumber(functions - imported);
        for (int f = imported; f < functions; f++) {
            out.putWide(bodies.to(f) - bodies.from(f));
            out.putAll(all, bodies.from(f), bodies.to(f));
        }
    }
}
