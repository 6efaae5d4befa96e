// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.earleaf.app.words.Words.tell;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.apache.tomcat.util.http.InvalidParameterException;
import org.earleaf.app.picture.Photograph;
import org.earleaf.app.store.StoreTrouble;
import org.earleaf.app.web.view.Phrases;
import org.earleaf.app.web.view.Places;
import org.earleaf.app.words.Words;
import org.earleaf.entry.Entered;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.validation.BindException;
import org.springframework.web.ErrorResponse;
import org.springframework.web.bind.MissingServletRequestParameterException;
import org.springframework.web.bind.annotation.ControllerAdvice;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.method.annotation.MethodArgumentTypeMismatchException;
import org.springframework.web.multipart.MaxUploadSizeExceededException;
import org.springframework.web.multipart.MultipartException;
import org.springframework.web.servlet.ModelAndView;

/** What went wrong, in sentences, with the way on. The page stands when nothing else does: neither farm nor store is asked. */
@ControllerAdvice
class Faults {
    private static final Logger LOG = LoggerFactory.getLogger(Faults.class);

    /** Another program's writing is seldom longer. */
    private static final String RETRY_S = "5";

    private final Desk desk;

    Faults(Desk desk) {
        this.desk = desk;
    }

    /** An address that names a field, load or record that is not there. */
    static final class NotHere extends RuntimeException {
        private static final long serialVersionUID = 1L;

        NotHere(String what) {
            super(what);
        }
    }

    /**
     * @param headline what is so
     * @param sentences what was found, what is expected, what to do
     * @param fields place and name of every field, when one of them may have been meant
     * @param codes of the rules that are broken
     */
    public record View(String headline, List<String> sentences, Map<String, String> fields, List<String> codes) {
        View(String headline, List<String> sentences, Map<String, String> fields) {
            this(headline, sentences, fields, List.of());
        }
    }

    /**
     * A problem as a page tells it.
     *
     * @param code of the rule that is broken, with the number that it speaks of, for programs and tests
     */
    public record Told(String code, String sentence) {
        @Override
        public String toString() {
            return sentence;
        }
    }

    static List<Told> told(List<Problem> problems) {
        return problems.stream()
                .map(Words.here()::told)
                .map(p -> new Told(p.key(), Phrases.capital(p.sentence())))
                .toList();
    }

    /** Whether what was sent may be a slip, and is taken when it is sent again with a word that it is so. */
    static boolean asks(List<Problem> problems) {
        return problems.stream().anyMatch(p -> p.code().equals(Entered.LOOK_AGAIN));
    }

    private static View view(String headline, EarleafException wrong) {
        List<Told> told = told(wrong.problems());
        return new View(
                headline,
                told.stream().map(Told::sentence).toList(),
                Map.of(),
                told.stream().map(Told::code).toList());
    }

    @ExceptionHandler
    ModelAndView wrongInput(EarleafException wrong, HttpServletRequest request) {
        return page(HttpStatus.BAD_REQUEST, view(tell("page.faults.this-cannot-be-done-as"), wrong), request);
    }

    /** What the store cannot do now is no mistake of the one who asked. */
    static HttpStatus status(EarleafException wrong) {
        return wrong instanceof StoreTrouble ? HttpStatus.SERVICE_UNAVAILABLE : HttpStatus.BAD_REQUEST;
    }

    @ExceptionHandler
    ModelAndView store(StoreTrouble trouble, HttpServletRequest request, HttpServletResponse response) {
        LOG.warn("store at {}", request.getRequestURI(), trouble);
        String headline =
                switch (trouble.kind()) {
                    case BUSY -> tell("page.faults.the-farm-file-is-busy");
                    case FULL -> tell("page.faults.the-disk-is-full");
                    case READ_ONLY -> tell("page.faults.nothing-can-be-saved-here");
                    case DAMAGED -> tell("page.faults.the-farm-file-is-damaged");
                };
        if (trouble.kind() == StoreTrouble.Kind.BUSY) {
            response.setHeader(HttpHeaders.RETRY_AFTER, RETRY_S);
        }
        return page(status(trouble), view(headline, trouble), request);
    }

    @ExceptionHandler
    ModelAndView tooLarge(MaxUploadSizeExceededException tooLarge, HttpServletRequest request) {
        String what = tell("page.faults.photograph-found-a-file", "value", Photograph.MOST_BYTES >> 20);
        return page(
                HttpStatus.CONTENT_TOO_LARGE,
                new View(tell("page.faults.the-photograph-is-too-large"), List.of(what), Map.of()),
                request);
    }

    @ExceptionHandler({
        MethodArgumentTypeMismatchException.class,
        MissingServletRequestParameterException.class,
        MultipartException.class,
        BindException.class
    })
    ModelAndView unreadable(Exception wrong, HttpServletRequest request) {
        String name = wrong instanceof MethodArgumentTypeMismatchException m ? m.getName() : "";
        String what = name.isEmpty()
                ? tell("page.faults.part-of-the-address-or")
                : tell("page.faults.the-value-of-cannot-be", "name", name);
        return page(
                HttpStatus.BAD_REQUEST,
                new View(tell("page.faults.this-cannot-be-read"), List.of(what), Map.of()),
                request);
    }

    /** Too many values, characters that are none, or a form that did not come whole. */
    @ExceptionHandler
    ModelAndView unreadable(InvalidParameterException wrong, HttpServletRequest request) {
        String what = tell("page.faults.it-has-too-many-values");
        HttpStatus status =
                Objects.requireNonNullElse(HttpStatus.resolve(wrong.getErrorCode()), HttpStatus.BAD_REQUEST);
        return page(status, new View(tell("page.faults.this-form-cannot-be-read"), List.of(what), Map.of()), request);
    }

    @ExceptionHandler
    ModelAndView notHere(NotHere missing, HttpServletRequest request) {
        Map<String, String> fields = fields();
        String said = missing.getMessage() == null ? tell("page.faults.nothing-stands-here") : missing.getMessage();
        List<String> way = fields.isEmpty() ? List.of() : List.of(tell("page.faults.the-fields-of-this-farm"));
        return page(HttpStatus.NOT_FOUND, new View(said, way, fields), request);
    }

    private Map<String, String> fields() {
        Map<String, String> fields = new LinkedHashMap<>();
        try {
            Places.of(desk.today().farm()).all().forEach((place, zone) -> fields.put(place, zone.label()));
        } catch (RuntimeException storeless) {
            LOG.warn("the fields of the farm cannot be read for a page of faults", storeless);
        }
        return fields;
    }

    /** What Spring has a status for is no fault of ours; what it cannot answer is no page. */
    @ExceptionHandler
    ModelAndView unexpected(Exception fault, HttpServletRequest request) {
        if (fault instanceof ErrorResponse known && known.getStatusCode().is4xxClientError()) {
            HttpStatus status = Objects.requireNonNullElse(
                    HttpStatus.resolve(known.getStatusCode().value()), HttpStatus.BAD_REQUEST);
            // A form sent to a page that takes none has no page there.
            return page(
                    status == HttpStatus.METHOD_NOT_ALLOWED ? HttpStatus.NOT_FOUND : status,
                    new View(
                            tell("page.faults.there-is-no-such-page"),
                            List.of(tell("page.faults.the-pages-stand-in-the")),
                            Map.of()),
                    request);
        }
        String id = UUID.randomUUID().toString().substring(0, 8);
        LOG.error("fault {} at {}", id, request.getRequestURI(), fault);
        String note = tell("page.faults.nothing-was-changed-by", "id", id);
        return page(
                HttpStatus.INTERNAL_SERVER_ERROR,
                new View(tell("page.faults.earleaf-made-a-mistake"), List.of(note), Map.of()),
                request);
    }

    static ModelAndView page(HttpStatus status, View view, HttpServletRequest request) {
        ModelAndView page = new ModelAndView("fault", status);
        page.addObject("light", Frame.light(request));
        page.addObject("version", Frame.VERSION);
        page.addObject("pages", Frame.PAGES);
        page.addObject("view", view);
        page.addObject("w", Words.here());
        return page;
    }
}
