package plumbleaf.jobfile.stock;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import plumbleaf.engine.takeoff.NetUnit;
import plumbleaf.engine.takeoff.OnHand;
import plumbleaf.engine.takeoff.StockTake;
import plumbleaf.engine.takeoff.Takeoff;

/**
 * What lies in the yard, what waits there for a job, and what is out with jobs. A job takes its stock once, leaves its offcuts, and can give everything back. What
 * came for a job is kept for it: no other job counts on it, its own order stays what it was, and it goes out with the rest when the job takes its stock.
 */
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
        return rows.stream().anyMatch(row -> row.job().is(job) && (row.isOut() || isOffcutHere(row)));
    }

    private static boolean isOffcutHere(YardRow row) {
        return row.isHere() && row.kind() == YardRow.Kind.OFFCUT;
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
        for (YardRow row : rows) {
            if (!row.isKept() || !row.job().is(job) || row.count() == 0) continue;
            after.set(after.indexOf(row), row.with(0));
            after.add(row.outWith(job, row.count()));
        }
        Set<String> marks = marks();
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
                    job,
                    ""));
        }
        return new Yard(after);
    }

    private Set<String> marks() {
        Set<String> marks = new TreeSet<>();
        for (YardRow row : rows) marks.add(row.mark());
        return marks;
    }

    /** The next mark of what came, or was left, that nothing here has. */
    private String newMark() {
        Set<String> marks = marks();
        int next = 1;
        while (marks.contains("Y" + next)) next++;
        return "Y" + next;
    }

    /** The yard with what came for a job, kept for it: beside what came of the same before, or under a mark of its own. */
    public Yard received(Taker job, Delivered came) {
        if (came.count() == 0) return this;
        YardRow one = YardRow.kept(newMark(), came, job);
        List<YardRow> after = new ArrayList<>(rows);
        for (int i = 0; i < rows.size(); i++) {
            YardRow row = rows.get(i);
            if (!row.isLike(one)) continue;
            after.set(i, row.with(row.count() + came.count()));
            return new Yard(after);
        }
        after.add(one);
        return new Yard(after);
    }

    /** How many of these lie here for the job. */
    public int kept(Taker job, Delivered came) {
        YardRow one = YardRow.kept("", came, job);
        return rows.stream()
                .filter(row -> row.isLike(one))
                .mapToInt(YardRow::count)
                .sum();
    }

    /** As if these had not come; as many must still lie here for the job. */
    public Yard notReceived(Taker job, Delivered came) {
        if (came.count() == 0) return this;
        if (kept(job, came) < came.count())
            throw new IllegalArgumentException(
                    "Of " + came.count() + " of " + came.item() + " only " + kept(job, came) + " still lie here");
        YardRow one = YardRow.kept("", came, job);
        List<YardRow> after = new ArrayList<>();
        for (YardRow row : rows) {
            boolean found = row.isLike(one);
            int left = found ? row.count() - came.count() : row.count();
            if (!found) after.add(row);
            else if (left > 0 || out(row.mark()) > 0) after.add(row.with(left));
        }
        return new Yard(after);
    }

    /** As if nothing had come of what still waits here for the job. */
    public Yard nothingReceived(Taker job) {
        List<YardRow> after = new ArrayList<>();
        for (YardRow row : rows) {
            if (!row.isKept() || !row.job().is(job)) after.add(row);
            else if (out(row.mark()) > 0) after.add(row.with(0));
        }
        return new Yard(after);
    }

    /**
     * All that ever came for a job of one line: what lies here for it, what it took of that, and what it left of it.
     * What was left and counted away by hand since is not in it.
     */
    public int came(Taker job, Delivered line) {
        YardRow kept = YardRow.kept("", line, job);
        YardRow left = kept.leftAs("", job, 0);
        int sum = 0;
        for (YardRow row : rows) {
            if (!row.isLike(kept) && !row.isLike(left)) continue;
            sum += row.count() + out(row.mark());
        }
        return sum;
    }

    private int out(String mark) {
        return rows.stream()
                .filter(row -> row.isOut() && row.mark().equals(mark))
                .mapToInt(YardRow::count)
                .sum();
    }

    /** What came for a job and waits for it. */
    public List<YardRow> keptFor(Taker job) {
        return rows.stream()
                .filter(row -> row.isKept() && row.job().is(job) && row.count() > 0)
                .toList();
    }

    /** How many of a mark a job has, waiting here or out. */
    public int with(Taker job, String mark) {
        return rows.stream()
                .filter(row -> !row.isHere() && row.job().is(job) && row.mark().equals(mark))
                .mapToInt(YardRow::count)
                .sum();
    }

    /**
     * What a job has of a mark and does not need, free for any other job from now on: back to where it was taken from, or under a mark of its own where it had come
     * for this job. What waits here goes first, then what is out.
     */
    public Yard cameBack(Taker job, String mark, int some) {
        if (some > with(job, mark))
            throw new IllegalArgumentException("The job has " + with(job, mark) + " of " + mark + ", not " + some);
        List<YardRow> after = new ArrayList<>(rows);
        int left = some;
        for (YardRow.State state : List.of(YardRow.State.KEPT, YardRow.State.OUT)) {
            for (int i = 0; i < after.size() && left > 0; i++) {
                YardRow row = after.get(i);
                if (row.state() != state || !row.job().is(job) || !row.mark().equals(mark)) continue;
                int freed = Math.min(left, row.count());
                after.set(i, row.with(row.count() - freed));
                left -= freed;
                lay(after, row, job, freed);
            }
        }
        after.removeIf(row -> row.count() == 0 && row.isOut());
        return new Yard(after);
    }

    /** Back on its own pile, or beside what the job left of the same. */
    private void lay(List<YardRow> after, YardRow row, Taker job, int some) {
        YardRow left = row.leftAs(newMark(), job, some);
        for (int i = 0; i < after.size(); i++) {
            YardRow pile = after.get(i);
            boolean own = pile.isHere() && pile.mark().equals(row.mark());
            if (!own && !pile.isLike(left)) continue;
            after.set(i, pile.with(pile.count() + some));
            return;
        }
        after.add(left);
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
            if (row.job().is(job) && isOffcutHere(row) && row.count() == 0) used.add(row.mark());
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
                if (out.isOut() && out.job().is(job) && out.mark().equals(row.mark())) back += out.count();
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
            if (row.job().is(job) && (row.isOut() || isOffcutHere(row))) continue;
            int back = 0;
            for (YardRow out : rows) {
                boolean mine = !row.isOut()
                        && out.isOut()
                        && out.job().is(job)
                        && out.mark().equals(row.mark());
                if (mine) back += out.count();
            }
            after.add(back == 0 ? row : row.with(row.count() + back));
        }
        return new Yard(after);
    }
}
