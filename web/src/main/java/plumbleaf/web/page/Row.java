package plumbleaf.web.page;

/**
 * A computed number.
 *
 * @param key  names the number for as long as the page lives, so that a change can be shown
 * @param note what it rests on or how it was come by; may be empty
 * @param of   the thing it belongs to, ringed in the drawing; may be empty
 */
public record Row(String key, String label, String value, String note, String of) {
    public static Row of(String key, String label, String value) {
        return new Row(key, label, value, "", "");
    }
}
