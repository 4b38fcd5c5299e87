package plumbleaf.engine.job;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;

/**
 * The months in which it may freeze at the site, from one through another, over the turn of the year where the second comes first in it.
 *
 * @param months in the order they come; none where nobody said
 */
public record FrostMonths(List<Month> months) {
    public static final FrostMonths UNSAID = new FrostMonths(List.of());

    public FrostMonths {
        months = List.copyOf(months);
    }

    public static FrostMonths of(Month from, Month through) {
        List<Month> months = new ArrayList<>(List.of(from));
        for (Month month = from; month != through; ) {
            month = month.plus(1);
            months.add(month);
        }
        return new FrostMonths(months);
    }

    public boolean isSaid() {
        return !months.isEmpty();
    }

    public boolean holds(LocalDate day) {
        return months.contains(day.getMonth());
    }
}
