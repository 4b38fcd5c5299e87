package plumbleaf.browser.packed;

import static plumbleaf.browser.packed.ModuleBytes.folded;
import static plumbleaf.browser.packed.ModuleBytes.unfolded;

/** Where the telling of instructions has come to: the bytes, what came before and what waits, from which all that comes next is guessed. */
final class Telling {
    final Odds odds;
    final PackedTypes types;
    final Waiting waiting = new Waiting();
    ModuleBytes in;
    Before before = new Before();

    Telling(Odds odds, PackedTypes types, ModuleBytes code) {
        this.odds = odds;
        this.types = types;
        this.in = code;
    }

    /** What the instruction names. */
    int operand(int part, int value, int op) {
        before.tell(odds, waiting, part, op);
        return odds.number(part, value);
    }

    /** What it names as it is written: a number. */
    int plain(int part, int op) {
        int told = operand(part, in.nextNumber(), op);
        in.putNumber(told);
        return told;
    }

    /** The same of one that may be below zero. */
    int side(int part, int op) {
        int told = unfolded(operand(part, folded(in.nextSigned()), op));
        in.putSigned(told);
        return told;
    }

    /** The same of a place among those that are numbered by their first use. */
    int place(int part, int most, int op) {
        int told = meant(operand(part, said(in.nextNumber(), most), op), most);
        in.putNumber(told);
        return told;
    }

    /** A place among those that are numbered by their first use, as it is told: 0 for the next new one. */
    static int said(int place, int most) {
        return place == most ? 0 : place + 1;
    }

    static int meant(int said, int most) {
        return said == 0 ? most : said - 1;
    }
}
