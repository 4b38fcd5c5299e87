package plumbleaf.web.page;

import org.springframework.http.CacheControl;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import plumbleaf.documents.plot.svg.SvgStyle;

/** The style sheet that every drawing on a page shares. */
@Controller
class DrawingStyle {
    @GetMapping("/drawing.css")
    ResponseEntity<String> sheet() {
        String css = SvgStyle.forPages();
        return ResponseEntity.ok()
                .contentType(MediaType.parseMediaType("text/css;charset=UTF-8"))
                .cacheControl(CacheControl.noCache())
                .eTag("\"" + Integer.toHexString(css.hashCode()) + "\"")
                .body(css);
    }
}
