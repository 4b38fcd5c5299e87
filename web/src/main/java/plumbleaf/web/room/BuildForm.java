package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import plumbleaf.web.page.Choice;
import plumbleaf.web.page.Entry;
import plumbleaf.web.store.StoredJob;

/**
 * A form about a build of the house: keeps how a gate or a run is made under a name, makes another one so, or forgets the name.
 *
 * @param does {@code keep}, {@code use} or {@code forget}
 * @param thing id of the gate or run
 */
record BuildForm(String does, String thing) {
    private static final Pattern LIST = Pattern.compile("builds\\+(keep|use|forget)\\+([A-Za-z0-9._-]{1,20})");
    static final int LONGEST_NAME = 60;

    static Optional<BuildForm> of(String list) {
        Matcher matcher = LIST.matcher(list);
        return matcher.matches() ? Optional.of(new BuildForm(matcher.group(1), matcher.group(2))) : Optional.empty();
    }

    String list() {
        return "builds+" + does + "+" + thing;
    }

    /** What a person can do with the builds of the house at one gate or run. */
    static List<Entry> entries(Opened opened, OwnBuilds builds, String list, String thing) {
        List<Entry> entries = new ArrayList<>();
        List<Choice> names = builds.names(kind(list)).stream()
                .map(name -> new Choice(name, name))
                .toList();
        if (!names.isEmpty())
            entries.add(new BuildForm("use", thing)
                    .entry(opened, "Make " + thing + " as one of your own builds", "Build it so", names));
        entries.add(new BuildForm("keep", thing)
                .entry(opened, "Keep how " + thing + " is made, under a name", "Keep build", List.of()));
        if (!names.isEmpty())
            entries.add(new BuildForm("forget", thing).entry(opened, "Forget a build", "Forget it", names));
        return entries;
    }

    private static String kind(String list) {
        return list.equals("gates") ? "gate" : "run";
    }

    private Entry entry(Opened opened, String heading, String words, List<Choice> names) {
        boolean mine = opened.typed().path().equals(list());
        String typed = mine ? opened.typed().form().getOrDefault("name", "") : "";
        return new Entry(
                list(),
                heading,
                words,
                List.of(new Entry.Blank("name", "Name", "text", typed, "", "", names)),
                1,
                false,
                mine ? opened.typed().problem() : "");
    }

    /** The job after it; the same job where only the builds of the house changed. */
    Edited done(OwnBuilds builds, Rooms rooms, StoredJob job, String name, String who) {
        DocumentText text = DocumentText.of(job.document());
        String list = text.has("gates[" + thing + "]") ? "gates" : "runs";
        if (!text.has(list + "[" + thing + "]"))
            return new Edited.Refused(list(), "This place is not in the job; load the page again.");
        if (name.isEmpty() || name.length() > LONGEST_NAME)
            return new Edited.Refused(list(), "A build needs a name of up to " + LONGEST_NAME + " letters.");
        Edited same = new Edited.Fine(job.title(), job.document(), "");
        switch (does) {
            case "keep" -> builds.keep(kind(list), name, BuildText.taken(text, list, thing), who);
            case "forget" -> builds.forget(kind(list), name);
            default -> {
                Optional<String> content = builds.content(kind(list), name);
                if (content.isEmpty()) return new Edited.Refused(list(), "There is no build of that name any more.");
                return rooms.read(
                        job, BuildText.on(text, list, thing, content.get()).text(), thing + " made as " + name, list());
            }
        }
        return same;
    }
}
