package plumbleaf.browser.packed;

/** The functions' bodies while they are unpacked, in the order in which they are told. Locals stand before the code, and are known only after it. */
final class MadeBodies implements Bodies {
    private ModuleBytes code = new ModuleBytes(new byte[0], 0);
    private int[] from = {};
    private int[] to = {};
    private boolean[] referred = {};

    @Override
    public int functions() {
        return 0;
    }

    @Override
    public int globals() {
        return 0;
    }

    @Override
    public void stand(ModuleBytes at) {
        code = at;
    }

    @Override
    public void are(int functions) {
        from = new int[functions];
        to = new int[functions];
        referred = new boolean[functions];
    }

    @Override
    public int typeOf(int function) {
        return 0;
    }

    @Override
    public boolean checks(int function) {
        return false;
    }

    @Override
    public void refers(int function) {
        referred[function] = true;
    }

    boolean isReferred(int function) {
        return referred[function];
    }

    int from(int function) {
        return from[function];
    }

    int to(int function) {
        return to[function];
    }

    @Override
    public int[] begin(int function, int[] given) {
        from[function] = code.at;
        return given;
    }

    @Override
    public void end(int function, int[] locals, int given) {
        int start = from[function];
        byte[] own = new byte[16 + 12 * (locals.length - given)];
        ModuleBytes said = new ModuleBytes(own, 0);
        int groups = 0;
        for (int i = given; i < locals.length; i++) if (i == given || locals[i] != locals[i - 1]) groups++;
        said.putNumber(groups);
        int i = given;
        while (i < locals.length) {
            int many = 1;
            while (i + many < locals.length && locals[i + many] == locals[i]) many++;
            said.putNumber(many);
            said.putValueType(locals[i]);
            i += many;
        }
        code.insert(start, own, said.at);
        to[function] = code.at;
    }
}
