package plumbleaf.web.yard;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.stock.YardRow;
import plumbleaf.web.page.Pages;
import plumbleaf.web.page.Table;
import plumbleaf.web.people.WhoIsThere;

/** Shows the yard, gives its file out and takes it in again after counting. */
@Controller
class YardDoor {
    private static final int MOST_ERRORS = 60;

    private final HouseYard yard;
    private final Pages pages;
    private final WhoIsThere who;

    YardDoor(HouseYard yard, Pages pages, WhoIsThere who) {
        this.yard = yard;
        this.pages = pages;
        this.who = who;
    }

    @GetMapping("/yard")
    ResponseEntity<String> yard(HttpServletRequest request) {
        return shown(request, HttpStatus.OK, List.of());
    }

    @GetMapping("/yard.csv")
    ResponseEntity<byte[]> file() {
        ContentDisposition download =
                ContentDisposition.attachment().filename("yard.csv").build();
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_DISPOSITION, download.toString())
                .header(HttpHeaders.CONTENT_TYPE, "text/csv; charset=utf-8")
                .body(yard.file().getBytes(StandardCharsets.UTF_8));
    }

    @PostMapping("/yard")
    ResponseEntity<String> bring(HttpServletRequest request, @RequestParam MultipartFile file) throws IOException {
        String name = who.person(request.getUserPrincipal()).name();
        List<InputError> errors = yard.bring(new String(file.getBytes(), StandardCharsets.UTF_8), name);
        if (!errors.isEmpty())
            return shown(
                    request,
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    errors.stream().limit(MOST_ERRORS).map(InputError::text).toList());
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(URI.create("/yard"))
                .build();
    }

    private ResponseEntity<String> shown(HttpServletRequest request, HttpStatus status, List<String> errors) {
        List<Table.Line> here = new ArrayList<>();
        List<Table.Line> out = new ArrayList<>();
        for (YardRow row : yard.yard().rows()) {
            if (row.count() == 0) continue;
            String count = Integer.toString(row.count());
            if (row.isHere())
                here.add(new Table.Line("", List.of(row.mark(), count, row.item(), size(row), row.job())));
            else out.add(new Table.Line("", List.of(row.mark(), count, row.item(), size(row), row.job())));
        }
        List<Table> tables = List.of(
                new Table("Lies here", List.of("Mark", "Count", "What", "Size", "Left by"), here),
                new Table("Out with jobs", List.of("Mark", "Count", "What", "Size", "With"), out));
        return pages.html(
                status,
                "yard.jte",
                Map.of(
                        "frame",
                        pages.frame(request, "Yard"),
                        "tables",
                        tables,
                        "history",
                        yard.history(),
                        "errors",
                        errors));
    }

    private static String size(YardRow row) {
        return switch (row.kind()) {
            case BAR -> LengthText.feetAndInches(row.length().inches());
            case OFFCUT -> LengthText.feetAndInches(row.length().inches()) + " offcut";
            case GOODS -> DecimalText.upTo(row.contents(), 2) + " " + row.of().key() + " each";
        };
    }
}
