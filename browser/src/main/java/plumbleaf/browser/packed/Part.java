package plumbleaf.browser.packed;

/** What a packed number stands for: each of these has its own odds. */
final class Part {
    static final int OP = 0;
    static final int LOCAL = 1;
    static final int FUNC = 2;
    static final int TYPE = 3;
    static final int FIELD = 4;
    static final int I32 = 5;
    static final int F64 = 6;
    static final int GLOBAL = 7;
    static final int LABEL = 8;
    static final int BLOCK = 9;
    static final int LOCALS = 10;
    static final int LOCAL_TYPE = 11;
    static final int MEMORY = 12;
    static final int I64 = 13;
    static final int COUNT = 14;
    static final int MISC = 15;
    static final int OCTET = 16;
    static final int HIT = 17;
    static final int FUNC_TYPE = 18;
    static final int TYPE_PART = 19;
    static final int GLOBAL_TYPE = 20;
    static final int WORDS = 21;
    static final int LOCAL_HIT = 22;
    static final int TYPE_KIND = 23;
    static final int TYPE_HIT = 24;

    static final int CHECK = 25;

    static final int KINDS = 26;

    private Part() {}
}
