package plumbleaf.browser.build;

import java.util.Arrays;

/** The module's words and tables: where the last five letters stood before, what followed them there is guessed first. */
final class PackedWords {
    /** A guess that has been right this often is asked for by itself. */
    private static final int TRUSTED = 8;

    private final ModuleBytes in;
    private final Odds odds;
    private final int start;
    private final int[] seen = new int[1 << 16];
    private int match = -1;
    private int length = 0;
    private int missed = 0;
    private int column = 0;

    PackedWords(ModuleBytes in, Odds odds) {
        this.in = in;
        this.odds = odds;
        this.start = in.at;
        Arrays.fill(seen, -1);
    }

    void pack(int end) {
        odds.number(Part.COUNT, end - start, 9, 0);
        while (in.at < end) {
            int like = match >= 0 ? in.octetAt(match) : -1;
            int octet = in.octetAt(in.at);
            tell(octet, like);
            in.octet();
            learn(octet, like);
        }
    }

    private int back(int places) {
        return in.at - places < start ? 0 : in.octetAt(in.at - places);
    }

    private void tell(int octet, int like) {
        boolean trusted = length >= TRUSTED;
        if (trusted) {
            odds.context(Part.WORDS_HIT, Math.min(length, 40));
            odds.context(Part.WORDS_HIT, 1, like, back(1));
            odds.context(Part.WORDS_HIT, missed, length > 20 ? 1 : 0, 7);
            odds.context(Part.WORDS_HIT, column, Math.min(length, 16), 3, 3);
            odds.flag(Part.WORDS_HIT, octet == like ? 1 : 0);
            if (octet == like) return;
        }
        int sure = trusted ? 0 : Math.min(length, 15);
        odds.context(Part.WORDS, back(1), back(2));
        odds.context(Part.WORDS, back(1), back(2), back(3));
        odds.context(Part.WORDS, trusted ? -1 : like, sure, 1, 1);
        odds.octet(Part.WORDS, octet);
    }

    private void learn(int octet, int like) {
        if (like == octet) {
            match++;
            length++;
            if (length == 32) missed = (missed * 2) & 7;
        } else {
            if (match >= 0) missed = (missed * 2 + 1) & 7;
            match = -1;
            length = 0;
        }
        int hash = 0;
        if (in.at - start >= 6) {
            for (int i = 1; i <= 5; i++) hash = hash * 31 + in.octetAt(in.at - i);
            hash = (hash * 0x9E3779B1) >>> 16;
        }
        if (match < 0) find(hash);
        seen[hash] = in.at;
        if (octet == ',') column++;
        if (octet == '\n') column = 0;
    }

    private void find(int hash) {
        match = seen[hash];
        length = 0;
        if (match >= 0)
            while (length < 32
                    && match - 1 - length >= start
                    && in.octetAt(match - 1 - length) == in.octetAt(in.at - 1 - length)) length++;
        if (length >= 5) return;
        match = -1;
        length = 0;
    }
}
