package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.web.page.Choice;
import plumbleaf.web.store.StoredJob;

/** The runs, gates and shots of a job that something can be filed under. */
public final class JobParts {
    private JobParts() {}

    public static List<Choice> of(StoredJob job) {
        DocumentText text = DocumentText.of(job.document());
        List<Choice> parts = new ArrayList<>();
        add(parts, text, "runs", "run ");
        add(parts, text, "gates", "gate ");
        add(parts, text, "ground.shots", "shot ");
        return parts;
    }

    private static void add(List<Choice> parts, DocumentText text, String list, String word) {
        for (int i = 0; i < text.count(list); i++)
            text.value(list + "[" + i + "].id").ifPresent(id -> parts.add(new Choice(id, word + id)));
    }
}
