// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.paper;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Objects;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.earleaf.app.words.Words;
import org.earleaf.app.words.WordsMessages;
import org.thymeleaf.context.Context;
import org.thymeleaf.spring6.SpringTemplateEngine;
import org.thymeleaf.templatemode.TemplateMode;
import org.thymeleaf.templateresolver.ClassLoaderTemplateResolver;

/**
 * Sheets as PDF: tagged, with every font in the file, on one page. Where a sheet says much, its type grows smaller, down
 * to the smallest that is still read at arm's length; beyond that it runs on to a second page rather than leave
 * anything out.
 */
public final class Paper {
    /** Sizes of type in points, tried from the largest. */
    private static final double[] POINTS = {10.5, 9.75, 9, 8.25, 7.5};

    private final SpringTemplateEngine engine = new SpringTemplateEngine();

    public Paper() {
        XRLog.setLoggingEnabled(false);
        ClassLoaderTemplateResolver resolver = new ClassLoaderTemplateResolver(Paper.class.getClassLoader());
        resolver.setPrefix("paper/");
        resolver.setSuffix(".xhtml");
        resolver.setTemplateMode(TemplateMode.XML);
        resolver.setCharacterEncoding(StandardCharsets.UTF_8.name());
        engine.setTemplateResolver(resolver);
        engine.setTemplateEngineMessageSource(new WordsMessages());
    }

    /**
     * One sheet.
     *
     * @param template "load", "record" or "posting"
     * @param sheet what it says
     */
    public byte[] pdf(String template, Object sheet, PaperSize size) {
        for (double points : POINTS) {
            try (PdfBoxRenderer renderer = renderer(html(template, sheet, size, points))) {
                renderer.layout();
                boolean fits = renderer.getRootBox().getLayer().getPages().size() == 1;
                if (fits || points == POINTS[POINTS.length - 1]) {
                    return written(renderer);
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        throw new IllegalStateException("no size of type");
    }

    private String html(String template, Object sheet, PaperSize size, double points) {
        Context context = new Context(Locale.US);
        context.setVariable("s", sheet);
        context.setVariable("w", Words.here());
        context.setVariable("size", size.word());
        context.setVariable("points", points);
        return engine.process(template, context);
    }

    private static PdfBoxRenderer renderer(String html) {
        PdfRendererBuilder builder = new PdfRendererBuilder();
        builder.usePdfUaAccessibility(true);
        font(builder, "archivo-400.ttf", "Archivo", 400);
        font(builder, "archivo-700.ttf", "Archivo", 700);
        font(builder, "besley-600.ttf", "Besley", 600);
        font(builder, "besley-600.ttf", "Besley", 700);
        font(builder, "besley-600.ttf", "Besley", 400);
        builder.withHtmlContent(html, null);
        return builder.buildPdfRenderer();
    }

    /** Each object by itself: packed together, the library's trailer counts one object more than the file holds. */
    private static byte[] written(PdfBoxRenderer renderer) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        renderer.createPDFKeepOpen().save(out, CompressParameters.NO_COMPRESSION);
        return out.toByteArray();
    }

    private static void font(PdfRendererBuilder builder, String file, String family, int weight) {
        builder.useFont(() -> open(file), family, weight, FontStyle.NORMAL, true);
    }

    private static InputStream open(String file) {
        return Objects.requireNonNull(Paper.class.getResourceAsStream("/paper/fonts/" + file), file);
    }
}
