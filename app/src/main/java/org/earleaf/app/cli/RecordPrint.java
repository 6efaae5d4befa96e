// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.earleaf.app.paper.Paper;
import org.earleaf.app.paper.PaperSize;
import org.earleaf.app.paper.PostingSheet;
import org.earleaf.app.paper.RecordSheet;
import org.earleaf.app.store.FarmStore;
import org.earleaf.farm.Farm;
import org.earleaf.label.LabelBook;
import org.earleaf.record.Chain;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/** Writes records as PDF, and posting sheets of those that are posted; no file is overwritten. */
final class RecordPrint {
    private RecordPrint() {}

    /** Names of what was written, in the order of filing. */
    static List<String> write(FarmStore store, Path folder, PaperSize size) {
        List<Chain.Entry> book = store.records();
        Farm farm = store.farm();
        LabelBook labels = store.loads().labels();
        Map<String, Chain.Entry> names = new LinkedHashMap<>();
        for (Chain.Entry e : book) {
            names.put("record " + e.number() + ".pdf", e);
            if (PostingSheet.isPosted(e.record())) {
                names.put("posting " + e.number() + ".pdf", e);
            }
        }
        names.keySet().forEach(name -> refuseExisting(folder.resolve(name)));
        Paper paper = new Paper();
        try {
            Files.createDirectories(folder);
            for (Map.Entry<String, Chain.Entry> each : names.entrySet()) {
                Chain.Entry e = each.getValue();
                byte[] pdf = each.getKey().startsWith("record")
                        ? paper.pdf("record", RecordSheet.of(e, book, farm), size)
                        : paper.pdf("posting", PostingSheet.of(e, book, labels, farm), size);
                Files.write(folder.resolve(each.getKey()), pdf, StandardOpenOption.CREATE_NEW);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(folder.toString(), e);
        }
        return new ArrayList<>(names.keySet());
    }

    private static void refuseExisting(Path file) {
        if (Files.exists(file)) {
            throw new EarleafException(Problem.of(
                    "record-print.a-folder-without-it",
                    Said.text(file.toString()),
                    Said.of("found.a-file-that-is-there")));
        }
    }
}
