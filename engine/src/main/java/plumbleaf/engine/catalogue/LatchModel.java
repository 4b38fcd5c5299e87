package plumbleaf.engine.catalogue;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

/**
 * A latch or lock with its keeper.
 *
 * @param tolerance how far the latch corner may be off in height and still latch, each way
 * @param bite how far bar or bolt reaches into the keeper: so far may the leaf move away from its post before it lets go
 * @param play of bar or bolt in its keeper across the leaf, both sides together
 * @param holds push square on the leaf that bar and keeper stand, service level; zero when unknown, which is never a pass
 * @param least gap between leaf and post it works with
 * @param greatest gap it works with
 */
public record LatchModel(
        String id,
        String name,
        Length tolerance,
        Length bite,
        Length play,
        Force holds,
        Length least,
        Length greatest,
        boolean selfLatching,
        Force weight,
        String source) {}
