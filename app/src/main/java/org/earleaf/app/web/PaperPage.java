// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import static org.earleaf.app.words.Words.tell;

import java.nio.charset.StandardCharsets;
import org.earleaf.app.desk.FarmDay;
import org.earleaf.app.paper.Paper;
import org.earleaf.app.paper.PaperSize;
import org.earleaf.app.paper.PostingSheet;
import org.earleaf.app.paper.RecordSheet;
import org.earleaf.app.store.LoadStore;
import org.earleaf.app.store.LoadStore.Kept;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.view.LoadPaper;
import org.earleaf.app.web.view.TankView;
import org.earleaf.load.TankLoad;
import org.earleaf.record.Chain;
import org.springframework.http.ContentDisposition;
import org.springframework.http.HttpHeaders;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.ModelAttribute;
import org.springframework.web.bind.annotation.PathVariable;
import org.springframework.web.bind.annotation.RequestParam;

/** Sheets to print: of a load, of a record, and for the posting place. */
@Controller
class PaperPage {
    private final Desk desk;
    private final Paper paper = new Paper();

    PaperPage(Desk desk) {
        this.desk = desk;
    }

    @GetMapping("/load/{id}/sheet.pdf")
    ResponseEntity<byte[]> load(
            @PathVariable String id,
            @RequestParam(defaultValue = "letter") String paper,
            @ModelAttribute(name = "format", binding = false) Format format) {
        LoadStore loads = desk.notebook().loads();
        Kept kept =
                loads.find(id).orElseThrow(() -> new Faults.NotHere(tell("page.paper.there-is-no-load-on", "id", id)));
        TankLoad load = kept.load();
        FarmDay today = desk.today();
        TankView.Shop shop = desk.shop(today, load);
        TankView view = TankView.of(kept, shop, loads.gate(load, today.on(), true), format);
        String head = Chain.head(desk.notebook().records());
        Object sheet =
                LoadPaper.of(today.farm().name(), view, load, shop.looked().findings(), head, format);
        return pdf("load", sheet, paper, tell("page.paper.load", "id", id));
    }

    @GetMapping("/records/{number}/record.pdf")
    ResponseEntity<byte[]> record(@PathVariable String number, @RequestParam(defaultValue = "letter") String paper) {
        Chain.Entry entry = entry(number);
        Object sheet =
                RecordSheet.of(entry, desk.notebook().records(), desk.today().farm());
        return pdf("record", sheet, paper, tell("page.paper.record", "number", String.valueOf(entry.number())));
    }

    @GetMapping("/records/{number}/posting.pdf")
    ResponseEntity<byte[]> posting(@PathVariable String number, @RequestParam(defaultValue = "letter") String paper) {
        Chain.Entry entry = entry(number);
        if (!PostingSheet.isPosted(entry.record())) {
            throw new Faults.NotHere(
                    tell("page.paper.record-holds-no-product", "number", String.valueOf(entry.number())));
        }
        Object sheet = PostingSheet.of(
                entry,
                desk.notebook().records(),
                desk.notebook().loads().labels(),
                desk.today().farm());
        return pdf("posting", sheet, paper, tell("page.paper.posting", "number", String.valueOf(entry.number())));
    }

    private Chain.Entry entry(String number) {
        return desk.notebook()
                .findRecord(number)
                .orElseThrow(() -> new Faults.NotHere(tell("page.paper.there-is-no-record", "number", number)));
    }

    private ResponseEntity<byte[]> pdf(String template, Object sheet, String size, String name) {
        byte[] pdf = paper.pdf(template, sheet, PaperSize.parse(size));
        return ResponseEntity.ok()
                .contentType(MediaType.APPLICATION_PDF)
                .header(
                        HttpHeaders.CONTENT_DISPOSITION,
                        ContentDisposition.inline()
                                .filename(name + ".pdf", StandardCharsets.UTF_8)
                                .build()
                                .toString())
                .body(pdf);
    }
}
