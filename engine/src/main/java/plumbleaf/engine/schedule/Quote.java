package plumbleaf.engine.schedule;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.labour.Labour;
import plumbleaf.engine.pricing.Price;
import plumbleaf.engine.takeoff.Takeoff;

/** What a job takes, what it costs, how long it lasts. */
public record Quote(Takeoff takeoff, Labour labour, Schedule schedule, Price price) {
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>(takeoff.findings());
        findings.addAll(labour.findings());
        return List.copyOf(findings);
    }
}
