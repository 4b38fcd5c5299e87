package plumbleaf.jobfile.job;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.job.GapRule;
import plumbleaf.engine.job.HeightRule;
import plumbleaf.engine.job.MeasuredFrom;
import plumbleaf.engine.job.Rules;
import plumbleaf.engine.quantity.Length;
import plumbleaf.jobfile.input.Entries;
import plumbleaf.jobfile.input.Fields;
import plumbleaf.jobfile.input.TextKind;

/** {@code rules}. */
final class TermsForm {
    private TermsForm() {}

    static Rules rules(Fields rules) {
        List<HeightRule> heights = new ArrayList<>();
        Fields height = rules.object("height");
        if (height.there())
            heights.add(new HeightRule(
                    height.needed("limit", Words.HEIGHT, Length.feet(6)),
                    height.assumed("from", Words.FROM, MeasuredFrom.LOWER_SIDE, "on the safe side")));
        for (Fields other : rules.objects("otherHeights"))
            heights.add(new HeightRule(
                    other.needed("limit", Words.HEIGHT, Length.feet(6)),
                    other.assumed("from", Words.FROM, MeasuredFrom.LOWER_SIDE, "on the safe side")));
        if (heights.size() > (height.there() ? 1 : 0) && !height.there())
            rules.refuse("otherHeights", "there is no first height rule", "put the first one under height");
        Fields gap = rules.object("gap");
        return new Rules(
                heights,
                new GapRule(gap.assumed("largest", TextKind.SIZE, Length.inches(4), Words.CUSTOM), gap.words("why")),
                SiteRulesForm.pools(rules.object("pool")),
                SiteRulesForm.sights(rules.objects("sights")),
                SiteRulesForm.accessible(rules.objects("accessible")),
                SiteRulesForm.nearHouse(rules.object("nearHouse")),
                SiteRulesForm.overnight(rules.objects("overnight")),
                SiteRulesForm.propertyLines(rules.objects("propertyLines")),
                KeepingForm.keeps(rules.objects("keeps")),
                KeepingForm.guards(rules.objects("guards")));
    }

    static void writeRules(Rules rules, Entries out) {
        for (int i = 0; i < rules.heights().size() && i < 1; i++) {
            HeightRule first = rules.heights().get(0);
            out.object("height", entries -> writeHeight(first, entries));
        }
        List<HeightRule> others = rules.heights().isEmpty()
                ? List.of()
                : rules.heights().subList(1, rules.heights().size());
        out.objects("otherHeights", others, TermsForm::writeHeight);
        out.object(
                "gap",
                gap -> gap.put("largest", TextKind.LENGTH, rules.gap().largest())
                        .words("why", rules.gap().why()));
        SiteRulesForm.write(rules, out);
        KeepingForm.write(rules, out);
    }

    private static void writeHeight(HeightRule rule, Entries out) {
        out.put("limit", TextKind.LENGTH, rule.limit()).put("from", Words.FROM, rule.from());
    }
}
