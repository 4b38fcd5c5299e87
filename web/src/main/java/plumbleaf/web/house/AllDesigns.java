package plumbleaf.web.house;

import java.util.ArrayList;
import java.util.List;
import org.springframework.stereotype.Component;
import plumbleaf.engine.design.Design;
import plumbleaf.web.room.Rooms;
import plumbleaf.web.store.JobLine;
import plumbleaf.web.store.JobStore;

/** The jobs of the store that can be designed, the latest change first; not more than so many, so that a page stays a page. */
@Component
class AllDesigns {
    static final int MOST = 60;

    private final JobStore store;
    private final Rooms rooms;

    AllDesigns(JobStore store, Rooms rooms) {
        this.store = store;
        this.rooms = rooms;
    }

    /** @param id of the job, for a link to it */
    record Of(String id, Design design) {}

    List<Of> latest() {
        List<Of> designs = new ArrayList<>();
        List<JobLine> lines = store.list();
        for (JobLine line : lines.subList(0, Math.min(MOST, lines.size())))
            store.open(line.id())
                    .flatMap(rooms::design)
                    .ifPresent(design -> designs.add(new Of(line.id().text(), design)));
        return designs;
    }
}
