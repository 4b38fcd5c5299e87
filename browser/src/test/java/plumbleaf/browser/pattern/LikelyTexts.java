package plumbleaf.browser.pattern;

import java.util.Random;

/** Texts that a pattern is likely to be found in, or nearly: walks through its steps, and noise around and within. */
final class LikelyTexts {
    private static final String NOISE =
            " 0179.,-'\"/:;()[]abxzAZ_=$\t\n\r\u2028\u0085\u00b2\u2212\u00e9\u0301\u00a0\ud83d\ude00";
    private static final int MOST_AGAIN = 4;

    private final Pattern pattern;
    private final String written;
    private final Random random;

    LikelyTexts(Pattern pattern, String written, long seed) {
        this.pattern = pattern;
        this.written = written;
        this.random = new Random(seed);
    }

    String next() {
        StringBuilder text = new StringBuilder();
        for (int parts = random.nextInt(4); parts >= 0; parts--) {
            noise(text, random.nextInt(3) == 0 ? random.nextInt(6) : 0);
            if (random.nextInt(8) > 0) walk(0, text);
        }
        noise(text, random.nextInt(4) == 0 ? 2 : 0);
        for (int i = random.nextInt(3); i > 0 && !text.isEmpty(); i--) {
            int at = random.nextInt(text.length());
            if (random.nextBoolean()) text.deleteCharAt(at);
            else text.setCharAt(at, some());
        }
        return text.toString();
    }

    private void noise(StringBuilder text, int many) {
        for (int i = 0; i < many; i++) text.append(some());
    }

    private char some() {
        String from = random.nextInt(3) == 0 ? written : NOISE;
        return from.charAt(random.nextInt(from.length()));
    }

    private void walk(int from, StringBuilder text) {
        String steps = pattern.steps;
        int at = from;
        while (true) {
            char of = at + 1 < steps.length() ? steps.charAt(at + 1) : 0;
            switch (steps.charAt(at)) {
                case Step.IS, Step.AMONG, Step.BESIDE -> {
                    text.append(one(at));
                    at += 2;
                }
                case Step.REPEAT -> {
                    int most = Math.min(steps.charAt(at + 2), of + MOST_AGAIN);
                    for (int i = of + random.nextInt(most - of + 1); i > 0; i--) text.append(one(at + 4));
                    at += 6;
                }
                case Step.EITHER, Step.LATER -> at += 2 + (random.nextInt(3) > 0 ? 0 : (short) of);
                case Step.GO -> at += 2 + (short) of;
                case Step.MARK -> at += 2;
                case Step.LOOK -> at += 4 + steps.charAt(at + 3);
                case Step.LAST, Step.EDGE -> at++;
                default -> {
                    return;
                }
            }
        }
    }

    private char one(int step) {
        char of = pattern.steps.charAt(step + 1);
        if (pattern.steps.charAt(step) == Step.IS) return of;
        String ranges = pattern.sets[of];
        if (pattern.steps.charAt(step) == Step.BESIDE) return some();
        int range = 2 * random.nextInt(ranges.length() / 2);
        return (char) (ranges.charAt(range) + random.nextInt(ranges.charAt(range + 1) - ranges.charAt(range) + 1));
    }
}
