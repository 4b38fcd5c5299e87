package plumbleaf.web.room;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import plumbleaf.engine.design.SearchTold;
import plumbleaf.engine.quantity.DecimalText;

/** A search that is asked for, runs behind the page or is over: how far it is, what it found, and whether somebody gave it up. */
final class GateSearching implements SearchTold {
    private final SearchHow how;
    private int looked;
    private int lessDrop;
    private boolean begun;
    private boolean givenUp;
    private boolean failed;
    private Optional<FoundBuilds> found = Optional.empty();
    private Optional<byte[]> proof = Optional.empty();

    GateSearching(SearchHow how) {
        this.how = how;
    }

    SearchHow how() {
        return how;
    }

    @Override
    public synchronized void looked(int builds, int measured) {
        if (givenUp) throw new CancellationException("Somebody gave this search up");
        looked = builds;
        lessDrop = measured;
    }

    synchronized void begin() {
        begun = true;
    }

    /** @param cheaper every cheaper build and what it fails, as a packed table */
    synchronized void end(FoundBuilds what, byte[] cheaper) {
        found = Optional.of(what);
        proof = Optional.of(cheaper);
    }

    synchronized void fail() {
        failed = true;
    }

    synchronized void giveUp() {
        givenUp = true;
    }

    synchronized boolean isRunning() {
        return found.isEmpty() && !failed && !givenUp;
    }

    synchronized boolean isFailed() {
        return failed;
    }

    synchronized Optional<FoundBuilds> found() {
        return found;
    }

    synchronized Optional<byte[]> proof() {
        return proof;
    }

    /** {@code 12,345 builds held against every check so far.} */
    synchronized String words() {
        if (!begun) return "Another search runs; this one comes after it.";
        if (looked == 0) return "The builds are being priced.";
        if (lessDrop == 0)
            return DecimalText.whole(looked) + " builds held against their checks so far, the cheapest first.";
        return "The cheapest is found. Now what less drop costs: " + DecimalText.whole(lessDrop)
                + " builds measured so far.";
    }
}
