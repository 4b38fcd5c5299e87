package plumbleaf.browser.packed;

import static plumbleaf.browser.packed.ModuleBytes.folded;
import static plumbleaf.browser.packed.ModuleBytes.unfolded;

/** The types and fields that instructions name. Mostly it is the type of what waits, or one above it. */
final class NamedTypes {
    private final Telling telling;

    NamedTypes(Telling telling) {
        this.telling = telling;
    }

    /** @param guess the type of what it works on: often the very one, or what that is a kind of; below zero for none */
    int tell(int op, int guess) {
        int type = telling.in.nextNumber();
        boolean told = false;
        if (guess >= 0) {
            telling.odds.context(Part.HIT, op, guess);
            telling.odds.context(Part.HIT, op, telling.before.whole1, telling.before.whole2);
            telling.odds.context(Part.HIT, op, telling.before.whole1, guess);
            int up = telling.odds.number(Part.HIT, up(guess, type));
            told = up < 11;
            if (told) {
                type = guess;
                for (int i = 0; i < up; i++) type = telling.types.above(type);
            }
        }
        if (!told) type = unfolded(telling.operand(Part.TYPE, folded(type), op));
        telling.in.putNumber(type);
        telling.before.type = type;
        return type;
    }

    /** How far above another a type is; 11 where it is not. */
    private int up(int guess, int type) {
        int above = guess;
        for (int up = 0; up <= 10 && above >= 0; up++) {
            if (above == type) return up;
            above = telling.types.above(above);
        }
        return 11;
    }

    int heap(int op) {
        int type = telling.side(Part.TYPE, op);
        telling.before.type = type;
        return type;
    }

    int field(int op) {
        int type = tell(op, telling.waiting.referred(op == 0x105 ? 1 : 0));
        int field = telling.plain(Part.FIELD, op);
        telling.waiting.take(op == 0x105 ? 2 : 1);
        if (op != 0x105) telling.waiting.put(PackedCode.wide(telling.types.fields(type)[field]));
        return type * 99 + field * 7777;
    }
}
