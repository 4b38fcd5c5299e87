package plumbleaf.web.books;

import jakarta.servlet.http.HttpServletRequest;
import java.io.IOException;
import java.math.BigDecimal;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.multipart.MultipartFile;
import org.springframework.web.server.ResponseStatusException;
import plumbleaf.jobfile.input.InputError;
import plumbleaf.jobfile.pricebook.PriceRise;
import plumbleaf.jobfile.table.SafeCsv;
import plumbleaf.web.page.Pages;
import plumbleaf.web.people.WhoIsThere;

/** Brings price books in and takes them out, table by table; raises their prices with the history kept. */
@Controller
class BooksDoor {
    private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9-]{0,40}");
    private static final Pattern SHARE = Pattern.compile("[+-]?\\d{1,2}(\\.\\d{1,4})?%?");
    private static final int MOST_ERRORS = 60;

    private final HouseBooks books;
    private final Pages pages;
    private final WhoIsThere who;
    private final Clock clock;

    BooksDoor(HouseBooks books, Pages pages, WhoIsThere who, Clock clock) {
        this.books = books;
        this.pages = pages;
        this.who = who;
        this.clock = clock;
    }

    @GetMapping("/books")
    ResponseEntity<String> books(HttpServletRequest request) {
        return shown(request, HttpStatus.OK, List.of());
    }

    @GetMapping("/books/{book}/{table}")
    ResponseEntity<byte[]> table(@PathVariable String book, @PathVariable String table) {
        String text = books.table(book, table).orElseThrow(() -> new ResponseStatusException(HttpStatus.NOT_FOUND));
        ContentDisposition download =
                ContentDisposition.attachment().filename(book + "-" + table).build();
        return ResponseEntity.ok()
                .header(HttpHeaders.CONTENT_DISPOSITION, download.toString())
                .header(HttpHeaders.CONTENT_TYPE, "text/csv; charset=utf-8")
                .body(SafeCsv.leaving(text).getBytes(StandardCharsets.UTF_8));
    }

    /** A new book, or other tables of one: the files' own names say which table each is. */
    @PostMapping("/books")
    ResponseEntity<String> bring(
            HttpServletRequest request,
            @RequestParam String book,
            @RequestParam(name = "file", required = false) List<MultipartFile> files)
            throws IOException {
        if (!NAME.matcher(book).matches())
            return shown(
                    request,
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    List.of("A price book goes by small letters, digits and hyphens, such as spring-2027."));
        Map<String, String> brought = new LinkedHashMap<>();
        for (MultipartFile file : files == null ? List.<MultipartFile>of() : files) {
            if (file.isEmpty()) continue;
            String table = tableOf(String.valueOf(file.getOriginalFilename()));
            if (table.isEmpty())
                return shown(
                        request,
                        HttpStatus.UNPROCESSABLE_CONTENT,
                        List.of(file.getOriginalFilename() + " is none of the tables; name it "
                                + String.join(", ", HouseBooks.TABLES)));
            brought.put(table, new String(file.getBytes(), StandardCharsets.UTF_8));
        }
        List<InputError> errors = books.bring(book, brought, me(request));
        if (!errors.isEmpty())
            return shown(
                    request,
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    errors.stream().limit(MOST_ERRORS).map(InputError::text).toList());
        return back();
    }

    @PostMapping("/books/{book}/raise")
    ResponseEntity<String> raise(
            HttpServletRequest request,
            @PathVariable String book,
            @RequestParam String by,
            @RequestParam String why,
            @RequestParam(defaultValue = "materials") String of,
            @RequestParam(defaultValue = "") String supplier,
            @RequestParam(defaultValue = "") String item) {
        if (!books.isOfTheHouse(book)) throw new ResponseStatusException(HttpStatus.NOT_FOUND);
        if (!SHARE.matcher(by.strip()).matches() || why.isBlank())
            return shown(
                    request,
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    List.of("Say by how many per cent, such as 4 or -2.5, and why."));
        PriceRise.Of what = PriceRise.Of.of(of)
                .orElseThrow(() -> new ResponseStatusException(HttpStatus.BAD_REQUEST, "No such prices"));
        BigDecimal share = new BigDecimal(by.strip().replace("%", "")).movePointLeft(2);
        LocalDate day = LocalDate.ofInstant(clock.instant(), ZoneId.systemDefault());
        int changed = books.raise(
                book, new PriceRise(what, share, day, why.strip(), supplier.strip(), item.strip()), me(request));
        if (changed == 0)
            return shown(
                    request,
                    HttpStatus.UNPROCESSABLE_CONTENT,
                    List.of("Nothing in the book is of that supplier and item; check the names in its table."));
        return back();
    }

    private static String tableOf(String file) {
        for (String table : HouseBooks.TABLES) if (file.endsWith(table)) return table;
        return "";
    }

    private ResponseEntity<String> shown(HttpServletRequest request, HttpStatus status, List<String> errors) {
        List<BookLine> lines = books.names().stream()
                .map(name -> new BookLine(
                        name,
                        books.isOfTheHouse(name),
                        books.book(name).map(book -> book.materials().size()).orElse(0),
                        books.table(name, HouseBooks.HISTORY).isPresent()))
                .toList();
        return pages.html(
                status,
                "books.jte",
                Map.of(
                        "frame",
                        pages.frame(request, "Price books"),
                        "books",
                        lines,
                        "tables",
                        HouseBooks.TABLES,
                        "errors",
                        errors));
    }

    private String me(HttpServletRequest request) {
        return who.person(request.getUserPrincipal()).name();
    }

    private static ResponseEntity<String> back() {
        return ResponseEntity.status(HttpStatus.SEE_OTHER)
                .location(URI.create("/books"))
                .build();
    }
}
