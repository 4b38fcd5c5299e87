package plumbleaf.documents.drawing;

/** What a mark belongs to, so that a reader or a drawing program can show a part of it. */
public enum Layer {
    GROUND,
    SURVEY,
    FENCE,
    PICKETS,
    POSTS,
    FOOTINGS,
    GATE,
    MEMBERS,
    HARDWARE,
    SWING,
    UTILITIES,
    HATCH,
    DIMENSIONS,
    NOTES,
    CHART,
    SHEET
}
