package plumbleaf.web.desk;

import java.util.Optional;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Verdict;
import plumbleaf.engine.job.Change;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.JobLog;
import plumbleaf.engine.job.Release;
import plumbleaf.engine.pricing.Statement;

/** Where a job stands between the first call and the last payment. Nobody sets it: it follows from what is written down. */
public enum Standing {
    SETTLE("settle", "to settle"),
    OFFER("offer", "ready to offer"),
    OFFERED("offered", "with the customer"),
    SOLD("sold", "sold"),
    BUILDING("building", "being built"),
    OWED("owed", "to be paid"),
    PAID("paid", "paid");

    private final String key;
    private final String words;

    Standing(String key, String words) {
        this.key = key;
        this.words = words;
    }

    public String key() {
        return key;
    }

    public String words() {
        return words;
    }

    static Optional<Standing> of(String key) {
        for (Standing standing : values()) if (standing.key.equals(key)) return Optional.of(standing);
        return Optional.empty();
    }

    /** By the job alone; a customer's link and acceptance, which lie beside it, are asked for when the desk is laid out. */
    static Standing of(Design design) {
        Job job = design.job();
        Statement account = Statement.of(
                design.quote().price(), job.log().changes(), job.money().billing());
        boolean moneyCame = !account.paid().isZero();
        if (moneyCame && account.balance().cents() <= 0) return PAID;
        if (!account.billed().isZero() && account.unbilled().cents() <= 0) return OWED;
        if (begun(job)) return BUILDING;
        if (moneyCame
                || !account.billed().isZero()
                || job.log().changes().stream().anyMatch(Change::accepted)) return SOLD;
        return design.verdict() == Verdict.PASSES ? OFFER : SETTLE;
    }

    /** Hours or goods written down, an opening measured as set, or a gate cleared for the shop. */
    private static boolean begun(Job job) {
        JobLog log = job.log();
        return !log.hours().isEmpty()
                || !log.used().isEmpty()
                || job.gates().stream().anyMatch(Standing::isInWork);
    }

    private static boolean isInWork(Gate gate) {
        Release release = gate.release();
        return !gate.asSet().isEmpty() || release.<Boolean>match(priced -> false, hold -> false, released -> true);
    }
}
