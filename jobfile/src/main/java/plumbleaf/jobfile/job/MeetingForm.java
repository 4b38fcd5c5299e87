package plumbleaf.jobfile.job;

import plumbleaf.engine.job.Meeting;
import plumbleaf.jobfile.input.Entries;
import plumbleaf.jobfile.input.Fields;
import plumbleaf.jobfile.input.TextKind;

/** {@code gates[].meeting} of a pair: stop strip, drop rod, ground sleeve, centre stop, keeper overhead. */
final class MeetingForm {
    private static final Meeting USUAL = Meeting.usual();

    private MeetingForm() {}

    static Meeting read(Fields meeting) {
        return new Meeting(
                meeting.assumed("strip", Words.GAP, USUAL.strip(), Words.CUSTOM),
                Open.of(meeting.given("rod", TextKind.WORDS)),
                meeting.assumedCount("rods", 1, 2, USUAL.rods(), Words.CUSTOM),
                meeting.assumed("sleeveAbove", Words.GAP, USUAL.sleeveAbove(), "flush with the ground"),
                meeting.assumed("sleeveHole", Words.HOLE, USUAL.sleeveHole(), Words.CUSTOM),
                meeting.assumed("sleeveDepth", Words.DEPTH, USUAL.sleeveDepth(), Words.CUSTOM),
                meeting.assumed("stop", Words.GAP, USUAL.stop(), "no center stop"),
                meeting.flag("topKeeper"));
    }

    static void write(Meeting meeting, Entries out) {
        out.put("strip", TextKind.LENGTH, meeting.strip())
                .putIfAny("rod", TextKind.WORDS, meeting.rod().value())
                .count("rods", meeting.rods())
                .put("sleeveAbove", TextKind.LENGTH, meeting.sleeveAbove())
                .put("sleeveHole", TextKind.LENGTH, meeting.sleeveHole())
                .put("sleeveDepth", TextKind.LENGTH, meeting.sleeveDepth())
                .put("stop", TextKind.LENGTH, meeting.stop())
                .flag("topKeeper", meeting.topKeeper());
    }
}
