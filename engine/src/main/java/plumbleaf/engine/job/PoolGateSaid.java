package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/**
 * What is said of a gate in a pool's barrier that its catalogue parts do not tell.
 *
 * @param releaseHeight of the latch release above grade, where it is not the latch's own
 * @param releaseOnPoolSide whether the release is on the pool's side alone
 * @param shielded whether no opening of more than 1/2 in. is left within 18 in. of the release
 * @param lockable whether it takes a lock
 * @param closer whether a closer shuts it, though its hinges do not
 * @param inactiveFixed of a pair, whether one leaf is fixed
 */
public record PoolGateSaid(
        String gate,
        Stated<Length> releaseHeight,
        Stated<Boolean> releaseOnPoolSide,
        boolean shielded,
        Stated<Boolean> lockable,
        Stated<Boolean> closer,
        Stated<Boolean> inactiveFixed) {
    static PoolGateSaid unsaid(String gate) {
        return new PoolGateSaid(gate, Stated.open(), Stated.open(), false, Stated.open(), Stated.open(), Stated.open());
    }
}
