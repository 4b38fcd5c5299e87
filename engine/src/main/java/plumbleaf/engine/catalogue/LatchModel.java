package plumbleaf.engine.catalogue;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

/**
 * @param tolerance how far the latch corner may be off in height and still latch, each way
 * @param least gap between leaf and post it works with
 * @param greatest gap it works with
 */
public record LatchModel(
        String id,
        String name,
        Length tolerance,
        Length least,
        Length greatest,
        boolean selfLatching,
        Force weight,
        String source) {}
