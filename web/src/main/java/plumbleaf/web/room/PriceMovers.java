package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.quantity.LengthText;

/**
 * The answers nobody gave yet that move the price most: each is tried once as it might turn out, the whole job designed and priced again with its gates made
 * as they are, where that holds.
 * What is tried for each is a judgement; what it does to the price is worked out.
 */
final class PriceMovers {
    private static final int SHOWN = 5;

    private PriceMovers() {}

    /**
     * @param path of the answer
     * @param words what is assumed, and what was tried instead
     * @param change of the total
     */
    record Mover(String path, String words, Money change) {}

    /** @param asDug whether the holes stay as deep as they are */
    private record Guess(String path, String json, String words, boolean asDug) {
        Guess(String path, String json, String words) {
            this(path, json, words, false);
        }

        Optional<Money> priced(DocumentText text, TriedPrices prices) {
            return asDug ? prices.totalAsDug(text) : prices.total(text);
        }
    }

    static List<Mover> of(Opened opened, TriedPrices prices) {
        if (opened.design().isEmpty()) return List.of();
        Money now = opened.design().get().quote().price().total();
        Map<String, Mover> movers = new LinkedHashMap<>();
        for (Guess guess : guesses(opened)) {
            if (opened.text().has(guess.path())) continue;
            Optional<Money> then = tried(opened.text(), guess).flatMap(text -> guess.priced(text, prices));
            if (then.isEmpty()) continue;
            Mover mover = new Mover(guess.path(), guess.words(), then.get().minus(now));
            if (mover.change().isZero()) continue;
            movers.merge(guess.path(), mover, (a, b) -> size(a) >= size(b) ? a : b);
        }
        return movers.values().stream()
                .sorted(Comparator.comparingLong(PriceMovers::size).reversed())
                .limit(SHOWN)
                .toList();
    }

    private static long size(Mover mover) {
        return Math.abs(mover.change().cents());
    }

    private static Optional<DocumentText> tried(DocumentText text, Guess guess) {
        try {
            return Optional.of(text.with(guess.path(), guess.json()));
        } catch (IllegalArgumentException noPlace) {
            return Optional.empty();
        }
    }

    private static List<Guess> guesses(Opened opened) {
        List<Guess> guesses = new ArrayList<>(List.of(
                guess("site.soil.kind", "rock", "The soil: if it is rock"),
                guess("site.soil.kind", "clay", "The soil: if it is clay"),
                guess("site.soil.rockAt", "24\"", "Rock in the hole: if it refuses at 2 ft"),
                guess("site.frost.depth", "48\"", "Frost: if it reaches 4 ft"),
                guess("site.wind.speed", "130 mph", "Wind: if 130 mph hold here"),
                guess("site.wind.exposure", "C", "Exposure: if the ground around is open"),
                guess("site.access.passage", "30\"", "The way in: if its narrowest place is 30 in."),
                guess("site.access.carry", "100'", "The way from the truck: if it is 100 ft")));
        DocumentText text = opened.text();
        for (int i = 0; i < text.count("runs"); i++) {
            String at = "runs[" + i + "].";
            String id = text.value(at + "id").orElse("");
            if (text.value(at + "style").orElse("").equals("none")) continue;
            guesses.add(guess(at + "infill", "8'", "Height of " + id + ": if it is 8 ft"));
            guesses.add(guess(at + "maxBay", "6'", "Bays of " + id + ": if they are 6 ft at most"));
            guesses.add(guess(at + "fit", "stepped", "The top of " + id + ": if it steps"));
            guesses.add(new Guess(at + "stain", "{ \"coats\": 2 }", "Finish of " + id + ": if it is stained twice"));
        }
        for (int i = 0; i < text.count("gates"); i++) {
            String at = "gates[" + i + "].";
            String id = text.value(at + "id").orElse("");
            guesses.add(guess(at + "leaf.infill", "5'", "Height of " + id + ": if it is 5 ft"));
            guesses.add(oldPost(at + "hingePost", "Hinge post of " + id + ": if the old one stays and holds"));
            guesses.add(oldPost(at + "latchPost", "Latch post of " + id + ": if the old one stays and holds"));
        }
        fenceLength(opened)
                .ifPresent(length -> guesses.add(new Guess(
                        "existing.fences",
                        "[{ \"kind\": \"old fence\", \"length\": " + DocumentText.quoted(length)
                                + ", \"pitch\": \"8'\", \"concrete\": true }]",
                        "An old fence: if one as long stands there, in concrete")));
        return guesses;
    }

    private static Optional<String> fenceLength(Opened opened) {
        double inches = opened.design().stream()
                .flatMap(design -> design.layout().runs().stream())
                .mapToDouble(run -> run.line().line().length().inches())
                .sum();
        return inches > 0 ? Optional.of(LengthText.exact(Math.rint(inches))) : Optional.empty();
    }

    private static Guess guess(String path, String value, String words) {
        return new Guess(path, DocumentText.quoted(value), words);
    }

    /** What an old post holds nobody knows before it is pulled at; until then it is priced as one that needs nothing. */
    private static Guess oldPost(String path, String words) {
        return new Guess(path, "{ \"support\": \"existing\" }", words, true);
    }
}
