package plumbleaf.jobfile.survey;

import plumbleaf.engine.ground.Shot;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;

/** A shot of a point file as a job holds it: east, north, elevation, each exactly. */
public final class ShotNode {
    private ShotNode() {}

    public static Node of(Shot shot) {
        Json.Members members = Json.object()
                .put("id", shot.id())
                .put("east", LengthText.exact(east(shot).inches()))
                .put("north", LengthText.exact(north(shot).inches()))
                .put("elevation", LengthText.exact(elevation(shot).inches()));
        if (!shot.note().isBlank()) members.put("note", shot.note());
        return members.build();
    }

    public static Offset east(Shot shot) {
        return shot.place().match(onRun -> Offset.ZERO, after -> Offset.ZERO, at -> at.east(), tapes -> Offset.ZERO);
    }

    public static Offset north(Shot shot) {
        return shot.place().match(onRun -> Offset.ZERO, after -> Offset.ZERO, at -> at.north(), tapes -> Offset.ZERO);
    }

    public static Offset elevation(Shot shot) {
        return shot.height().match(rod -> Offset.ZERO, elevation -> elevation.above(), falls -> Offset.ZERO);
    }
}
