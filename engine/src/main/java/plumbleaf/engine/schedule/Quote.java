package plumbleaf.engine.schedule;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.labour.Labour;
import plumbleaf.engine.pricing.Price;
import plumbleaf.engine.takeoff.LoadList;
import plumbleaf.engine.takeoff.Takeoff;
import plumbleaf.engine.takeoff.TornOut;

/**
 * What a job takes, what it costs, how long it lasts.
 *
 * @param load what goes on the truck, day by day
 * @param torn what comes out and is hauled off
 * @param notes what the price leaves out, and why
 */
public record Quote(
        Takeoff takeoff,
        LoadList load,
        TornOut torn,
        Labour labour,
        Schedule schedule,
        Price price,
        List<Finding> notes) {
    public Quote {
        notes = List.copyOf(notes);
    }

    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>(takeoff.findings());
        findings.addAll(load.findings());
        findings.addAll(labour.findings());
        findings.addAll(notes);
        return List.copyOf(findings);
    }
}
