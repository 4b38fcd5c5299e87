package plumbleaf.web.desk;

import jakarta.servlet.http.HttpServletRequest;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import plumbleaf.engine.money.Money;
import plumbleaf.web.room.Sight;

/** Lays the desk out as it was asked for: {@code find} words, {@code at} a standing, {@code from} the so-manieth job on. */
@Component
class DeskSheets {
    static final int A_PAGE = 40;
    private static final int LONGEST_SEARCH = 200;

    private final DeskClerk clerk;
    private final DeskCards cards;
    private final Clock clock;

    DeskSheets(DeskClerk clerk, DeskCards cards, Clock clock) {
        this.clerk = clerk;
        this.cards = cards;
        this.clock = clock;
    }

    DeskSheet of(HttpServletRequest request, Sight sight) {
        String search = text(request.getParameter("find"));
        Optional<Standing> at = Standing.of(text(request.getParameter("at")));
        int from = count(text(request.getParameter("from")));
        long behind = clerk.catchUp();
        List<DeskCards.Laid> found = cards.find(search, at, from, A_PAGE + 1);
        List<DeskCards.Laid> page = found.subList(0, Math.min(A_PAGE, found.size()));
        clerk.refresh(page);
        LocalDate today = LocalDate.ofInstant(clock.instant(), ZoneId.systemDefault());
        return new DeskSheet(
                search,
                at.map(Standing::key).orElse(""),
                piles(search, sight),
                page.stream().map(laid -> DeskLine.of(laid, today, sight)).toList(),
                from,
                found.size() > A_PAGE,
                behind);
    }

    private List<DeskSheet.Pile> piles(String search, Sight sight) {
        List<DeskCards.Pile> there = cards.piles(search);
        List<DeskSheet.Pile> piles = new ArrayList<>();
        for (Standing standing : Standing.values()) {
            long jobs = 0;
            long cents = 0;
            for (DeskCards.Pile pile : there) {
                if (pile.standing() != standing) continue;
                jobs += pile.jobs();
                cents += pile.cents();
            }
            String value =
                    sight == Sight.EVERYTHING && jobs > 0 ? Money.cents(cents).text() : "";
            piles.add(new DeskSheet.Pile(standing.key(), standing.words(), jobs, value));
        }
        return piles;
    }

    private static String text(@Nullable String asked) {
        if (asked == null) return "";
        String text = asked.strip();
        return text.length() > LONGEST_SEARCH ? text.substring(0, LONGEST_SEARCH) : text;
    }

    private static int count(String text) {
        return text.matches("[0-9]{1,7}") ? Integer.parseInt(text) : 0;
    }
}
