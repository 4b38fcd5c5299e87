package plumbleaf.jobfile.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import plumbleaf.engine.takeoff.NetUnit;
import plumbleaf.engine.takeoff.OnHand;
import plumbleaf.engine.takeoff.StockTake;
import plumbleaf.engine.takeoff.Takeoff;

/** What lies in the yard and what is out with jobs. A job takes its stock once, leaves its offcuts, and can give everything back. */
public record Yard(List<YardRow> rows) {
    public Yard {
        rows = List.copyOf(rows);
    }

    public static Yard empty() {
        return new Yard(List.of());
    }

    /** What a job can use. */
    public OnHand onHand() {
        List<OnHand.HeldBar> bars = new ArrayList<>();
        List<OnHand.HeldGoods> goods = new ArrayList<>();
        for (YardRow row : rows) {
            if (!row.isHere() || row.count() == 0) continue;
            if (row.kind() == YardRow.Kind.GOODS)
                goods.add(new OnHand.HeldGoods(row.mark(), row.item(), row.count(), row.contents(), row.of()));
            else
                bars.add(new OnHand.HeldBar(
                        row.mark(), row.item(), row.length(), row.count(), row.kind() == YardRow.Kind.OFFCUT));
        }
        return new OnHand(bars, goods);
    }

    /** Whether a job has taken from here, or left offcuts here, already. */
    public boolean knows(Taker job) {
        return rows.stream().anyMatch(row -> row.job().is(job));
    }

    /**
     * The yard after a job took what it uses and left the offcuts worth keeping, each with a mark of its own.
     *
     * @param job it must not have taken anything yet
     */
    public Yard after(Taker job, Takeoff takeoff) {
        if (knows(job)) throw new IllegalArgumentException("The job " + job.title() + " has been booked already");
        List<YardRow> after = new ArrayList<>(rows);
        for (StockTake take : takeoff.taken()) take(after, job, take);
        Set<String> marks = new TreeSet<>();
        for (YardRow row : rows) marks.add(row.mark());
        int next = 1;
        for (OnHand.HeldBar kept : takeoff.kept()) {
            while (!marks.add("O" + next)) next++;
            after.add(new YardRow(
                    "O" + next,
                    kept.item(),
                    YardRow.Kind.OFFCUT,
                    kept.length(),
                    1,
                    1,
                    NetUnit.FEET,
                    YardRow.State.HERE,
                    job));
        }
        return new Yard(after);
    }

    private static void take(List<YardRow> rows, Taker job, StockTake take) {
        for (int i = 0; i < rows.size(); i++) {
            YardRow row = rows.get(i);
            if (!row.isHere() || !row.mark().equals(take.mark())) continue;
            if (row.count() < take.count())
                throw new IllegalArgumentException(
                        "There are " + row.count() + " of " + row.mark() + ", not " + take.count());
            rows.set(i, row.with(row.count() - take.count()));
            rows.add(row.outWith(job, take.count()));
            return;
        }
        throw new IllegalArgumentException("Nothing in the yard is marked " + take.mark());
    }

    /** Offcuts a job left that other jobs have taken since: while there are any, it cannot give everything back. */
    public List<String> usedSince(Taker job) {
        List<String> used = new ArrayList<>();
        for (YardRow row : rows) {
            boolean left = row.job().is(job) && row.isHere() && row.kind() == YardRow.Kind.OFFCUT;
            if (left && row.count() == 0) used.add(row.mark());
        }
        return used;
    }

    /** What a job may count on: what lies there, and what it has taken itself; not the offcuts it is going to leave. */
    public Yard asSeenBy(Taker job) {
        List<YardRow> seen = new ArrayList<>();
        for (YardRow row : rows) {
            if (!row.isHere() || row.job().is(job)) continue;
            int back = 0;
            for (YardRow out : rows) {
                if (!out.isHere() && out.job().is(job) && out.mark().equals(row.mark())) back += out.count();
            }
            seen.add(back == 0 ? row : row.with(row.count() + back));
        }
        return new Yard(seen);
    }

    /** What lies here of a mark, counted again by hand. */
    public Yard counted(String mark, int now) {
        return new Yard(rows.stream()
                .map(row -> row.isHere() && row.mark().equals(mark) ? row.with(now) : row)
                .toList());
    }

    /** The yard as if the job had never taken anything. */
    public Yard givenBack(Taker job) {
        if (!usedSince(job).isEmpty())
            throw new IllegalArgumentException("Offcuts of " + job.title() + " have been used: " + usedSince(job));
        List<YardRow> after = new ArrayList<>();
        for (YardRow row : rows) {
            if (row.job().is(job)) continue;
            int back = 0;
            for (YardRow out : rows) {
                boolean mine = row.isHere()
                        && out.state() == YardRow.State.OUT
                        && out.job().is(job)
                        && out.mark().equals(row.mark());
                if (mine) back += out.count();
            }
            after.add(back == 0 ? row : row.with(row.count() + back));
        }
        return new Yard(after);
    }
}
