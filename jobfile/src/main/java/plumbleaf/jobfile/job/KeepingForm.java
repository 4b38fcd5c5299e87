package plumbleaf.jobfile.job;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.job.Guarded;
import plumbleaf.engine.job.Keeping;
import plumbleaf.engine.job.Kept;
import plumbleaf.engine.job.Rules;
import plumbleaf.engine.quantity.Length;
import plumbleaf.jobfile.input.Entries;
import plumbleaf.jobfile.input.Fields;
import plumbleaf.jobfile.input.TextKind;

/** {@code rules.keeps} and {@code rules.guards}: what the fence is for, and where it stands beside a drop. */
final class KeepingForm {
    private static final TextKind<Kept> KEPT =
            TextKind.oneOf("what a fence keeps in or out", List.of(Kept.values()), Kept::key);
    private static final TextKind<Boolean> ANSWER =
            TextKind.oneOf("an answer", List.of(true, false), answer -> answer ? "yes" : "no");

    private KeepingForm() {}

    static List<Keeping> keeps(List<Fields> all) {
        List<Keeping> keeps = new ArrayList<>();
        for (Fields fields : all)
            keeps.add(new Keeping(
                    fields.needed("what", KEPT, Kept.LARGE_DOG),
                    fields.values("runs", TextKind.WORDS),
                    Open.of(fields.given("largest", Words.SPACE))));
        return keeps;
    }

    static List<Guarded> guards(List<Fields> all) {
        List<Guarded> guards = new ArrayList<>();
        for (Fields fields : all)
            guards.add(new Guarded(
                    SiteRulesForm.stretch(fields),
                    fields.needed("drop", Words.RISE, Length.inches(30)),
                    fields.assumed("dwelling", ANSWER, false, "on the safe side")));
        return guards;
    }

    static void write(Rules rules, Entries out) {
        out.objects("keeps", rules.keeps(), (keeping, entries) -> {
            entries.put("what", KEPT, keeping.what()).values("runs", TextKind.WORDS, keeping.runs());
            entries.putIfAny("largest", TextKind.LENGTH, keeping.largest().value());
        });
        out.objects(
                "guards",
                rules.guards(),
                (guard, entries) -> entries.words("run", guard.at().run())
                        .put("from", TextKind.LENGTH, guard.at().from())
                        .put("to", TextKind.LENGTH, guard.at().to())
                        .put("drop", TextKind.LENGTH, guard.drop())
                        .put("dwelling", ANSWER, guard.dwelling()));
    }
}
