package plumbleaf.engine.job;

import java.util.Optional;
import plumbleaf.engine.quantity.Length;

/**
 * A stretch of a run where no hole may be: stations of its two edges, and why.
 *
 * @param ticket number of the locate ticket by which a utility was marked there; open where none was
 */
public record NoDig(Length from, Length to, String why, Stated<String> ticket) {
    /** Why, and for a utility by which ticket and until when that holds: {@code gas main, locate ticket A-1187, through 2027-05-17}. */
    public String words(Existing existing) {
        return ticket.value()
                .map(number -> why + ", locate ticket " + number
                        + marked(existing)
                                .map(held -> ", through " + held.validThrough())
                                .orElse(""))
                .orElse(why);
    }

    /** The ticket itself. */
    public Optional<LocateTicket> marked(Existing existing) {
        return ticket.value()
                .flatMap(number -> existing.tickets().stream()
                        .filter(each -> each.number().equals(number))
                        .findFirst());
    }
}
