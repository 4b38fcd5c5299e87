package plumbleaf.browser.packed;

/** The numbers that stand in instructions octet by octet: long whole ones and fractions. */
final class PackedConstants {
    private PackedConstants() {}

    /**
     * LEB128.
     *
     * @return what it is known by afterwards
     */
    static int wholeNumber(Telling telling) {
        Odds odds = telling.odds;
        int known = 0;
        int octet;
        int n = 0;
        do {
            odds.context(Part.I64, n);
            odds.context(Part.I64, n, known);
            odds.context(Part.I64, n, known, telling.before.whole1);
            octet = odds.octet(Part.I64, telling.in.ahead(0));
            telling.in.put(octet);
            n++;
            known = Odds.mix(known, octet);
        } while (octet > 127);
        return known;
    }

    /** Four octets as they are. */
    static void shortFraction(Telling telling) {
        for (int i = 0; i < 4; i++) {
            telling.odds.context(Part.OCTET, i);
            telling.in.put(telling.odds.octet(Part.OCTET, telling.in.ahead(0)));
        }
    }

    /**
     * How many of its eight octets are not zero, from its sign on, and these.
     *
     * @return what it is known by afterwards
     */
    static int fraction(Telling telling) {
        Odds odds = telling.odds;
        ModuleBytes in = telling.in;
        Before before = telling.before;
        int zeros = 0;
        while (zeros < 8 && in.ahead(zeros) == 0) zeros++;
        odds.context(Part.F64, before.op1);
        odds.context(Part.F64, before.whole1, before.op1);
        zeros = odds.number(Part.F64, zeros);
        int known = zeros;
        for (int i = 7; i >= zeros; i--) {
            odds.context(Part.F64, i, zeros);
            odds.context(Part.F64, i, known);
            int octet = odds.octet(Part.F64, in.ahead(i));
            in.put(i, octet);
            known = Odds.mix(known, octet);
        }
        in.at += 8;
        return known;
    }
}
