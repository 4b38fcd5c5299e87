package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.web.page.Choice;
import plumbleaf.web.page.Field;
import plumbleaf.web.page.Panel;

/** The items of a list of the job, each on a strip with what was said of it, to change or to take out. */
final class Listed {
    private Listed() {}

    /**
     * @param list of the job: {@code runs[R1].noDig}
     * @param noun by which a strip is known where an item has no id: {@code No-dig}
     */
    static List<Panel.Strip> strips(Opened opened, Ledger ledger, String list, String noun) {
        List<Panel.Strip> strips = new ArrayList<>();
        for (int i = 0; i < opened.text().count(list); i++) {
            String at = opened.text().numbered(list + "[" + i + "]");
            String name = opened.text().value(at + ".id").orElse(noun + " " + (i + 1));
            strips.add(new Panel.Strip(name, at, many(opened, ledger, at), fields(opened, ledger, at, name)));
        }
        return strips;
    }

    private static List<Field> fields(Opened opened, Ledger ledger, String at, String of) {
        List<Field> fields = new ArrayList<>();
        for (Blank blank : ledger.blanks()) {
            String path = blank.key().equals(Blank.ITSELF) ? at : at + "." + blank.key();
            boolean shown = blank.kind() == Blank.Kind.MAYBE
                    || blank.kind() == Blank.Kind.YES
                    || opened.typed().path().equals(path)
                    || opened.text().value(path).isPresent()
                    || opened.fields().isAssumed(path);
            if (!shown || blank.kind().isMany()) continue;
            List<Choice> choices = ledger.choices(blank, opened);
            fields.add(opened.fields().choice(path, blank.label(), blank.kind().unit(), of, choices, ""));
        }
        return fields;
    }

    /** What a blank with several values holds, in words. */
    private static String many(Opened opened, Ledger ledger, String at) {
        List<String> all = new ArrayList<>();
        for (Blank blank : ledger.blanks()) {
            String path = at + "." + blank.key();
            if (!blank.kind().isMany()) continue;
            for (int i = 0; i < opened.text().count(path); i++) {
                String item = path + "[" + i + "]";
                all.add(opened.text().value(item).orElseGet(() -> point(opened.text(), item)));
            }
        }
        return String.join("; ", all);
    }

    private static String point(DocumentText text, String at) {
        return text.value(at + ".east").orElse("?") + " east, "
                + text.value(at + ".north").orElse("?") + " north";
    }
}
