package plumbleaf.web.desk;

import plumbleaf.web.room.HandSketch;

/** One of the four pictures. */
public record HandPicture(String value, String svg, String words, boolean chosen) {
    static HandPicture of(String value, HandSketch sketch, String chosen) {
        return new HandPicture(value, sketch.svg(), sketch.words().replace("from outside: ", ""), chosen.equals(value));
    }
}
