// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.earleaf.app.desk.Wiring;
import org.earleaf.app.paper.PaperSize;
import org.earleaf.app.store.FarmStore;
import org.earleaf.app.store.Ids;
import org.earleaf.entry.Draft;
import org.earleaf.entry.PassEntry;
import org.earleaf.entry.Plots;
import org.earleaf.entry.Shelf;
import org.earleaf.farm.Farm;
import org.earleaf.field.Pass;
import org.earleaf.record.Account;
import org.earleaf.record.Chain;
import org.earleaf.record.FiledRecord;
import org.earleaf.record.Told;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.Spec;

/** {@code earleaf record}: passes made, and the records that are filed of them. */
@Command(name = "record", mixinStandardHelpOptions = true)
public final class RecordCommand implements Callable<Integer> {
    private final Wiring wiring;

    @Mixin
    private final Common common = new Common();

    @Spec
    private CommandSpec spec = CommandSpec.create();

    public RecordCommand(Wiring wiring) {
        this.wiring = wiring;
    }

    @Override
    public Integer call() {
        return list(common);
    }

    @Command(name = "list", mixinStandardHelpOptions = true)
    int list(@Mixin Common common) {
        try (FarmStore store = open(common)) {
            List<Chain.Entry> entries = store.records();
            List<Pass> planned = planned(store.farm());
            print(common.isJson() ? RecordText.listJson(entries, planned) : RecordText.list(entries, planned));
        }
        return Faults.DONE;
    }

    @Command(name = "show", mixinStandardHelpOptions = true)
    int show(
            @Mixin Common common,
            @Parameters(paramLabel = "NUMBER", descriptionKey = "cli.record.option.number") String number) {
        try (FarmStore store = open(common)) {
            Chain.Entry entry = find(store, number);
            List<Chain.Entry> all = store.records();
            Farm farm = store.farm();
            print(common.isJson() ? RecordText.json(entry, all, farm) : RecordText.of(entry, all, farm));
        }
        return Faults.DONE;
    }

    @Command(name = "made", mixinStandardHelpOptions = true)
    int made(
            @Mixin Common common,
            @Option(names = "--pass", defaultValue = "", paramLabel = "ID", descriptionKey = "cli.record.option.pass")
                    String pass,
            @Mixin PassOptions what,
            @Mixin ToldOptions told) {
        try (FarmStore store = open(common)) {
            Farm farm = store.farm();
            LocalDate date = common.findOn().orElseGet(() -> wiring.today(farm));
            Draft draft = PassEntry.asPlanned(what.draft(pass, date), farm.passes());
            Pass made = PassEntry.of(
                            draft, Plots.of(farm), Shelf.of(farm), Optional.of(wiring.today(farm)), Pass.State.MADE)
                    .orThrow(what.isSure());
            Told known = told.told(farm, made, now());
            Chain.Entry entry = store.fileMade(made, kept -> Account.of(newId(), farm, kept, known));
            filed(common, entry, store, farm);
        }
        return Faults.DONE;
    }

    @Command(name = "correct", mixinStandardHelpOptions = true)
    int correct(
            @Mixin Common common,
            @Parameters(paramLabel = "NUMBER", descriptionKey = "cli.record.option.number-2") String number,
            @Option(names = "--why", required = true, paramLabel = "TEXT", descriptionKey = "cli.record.option.why")
                    String why,
            @Mixin PassOptions what,
            @Mixin ToldOptions told) {
        try (FarmStore store = open(common)) {
            Farm farm = store.farm();
            FiledRecord wrong = find(store, number).record();
            LocalDate date = common.findOn().orElse(wrong.date());
            Draft draft = PassEntry.asFiled(what.draft(wrong.passId(), date), wrong, farm.passes());
            Pass right = PassEntry.corrected(draft, Plots.of(farm), Shelf.of(farm), wiring.today(farm))
                    .orThrow(what.isSure());
            FiledRecord correction =
                    Account.correction(newId(), wrong.id(), why, farm, right, told.told(farm, right, now()));
            filed(common, store.correct(correction, right), store, farm);
        }
        return Faults.DONE;
    }

    @Command(name = "verify", mixinStandardHelpOptions = true)
    int verify(
            @Mixin Common common,
            @Option(names = "--head", defaultValue = "", paramLabel = "HASH", descriptionKey = "cli.record.option.head")
                    String head) {
        try (FarmStore store = open(common)) {
            List<Chain.Entry> all = store.records();
            Optional<Chain.Break> broken = head.isBlank() ? Chain.verify(all) : Chain.verify(all, head);
            if (broken.isPresent()) {
                throw new EarleafException(Problem.of(
                        "record.chain-broken",
                        Said.of(
                                "where.record-number",
                                "farm",
                                String.valueOf(common.farm()),
                                "number",
                                broken.get().number()),
                        broken.get().why()));
            }
            store.requireWhole();
            String newest = Chain.head(all);
            print(
                    common.isJson()
                            ? Json.text(Json.object("records", all.size(), "whole", true, "head", newest))
                            : tell("cli.record.all-as-filed-newest-hash", "n", all.size(), "newest", newest));
        }
        return Faults.DONE;
    }

    @Command(name = "export", mixinStandardHelpOptions = true)
    int export(
            @Mixin Common common,
            @Option(names = "--pdf", paramLabel = "DIR", descriptionKey = "cli.record.option.pdf") @Nullable Path pdf,
            @Option(
                            names = "--paper",
                            defaultValue = "letter",
                            paramLabel = "SIZE",
                            descriptionKey = "cli.record.option.paper")
                    String paper) {
        try (FarmStore store = open(common)) {
            if (pdf != null) {
                List<String> names = RecordPrint.write(store, pdf, PaperSize.parse(paper));
                print(
                        common.isJson()
                                ? Json.text(Json.object("folder", pdf.toString(), "files", names))
                                : tell("cli.record.written-to", "n", names.size(), "pdf", String.valueOf(pdf)));
                return Faults.DONE;
            }
            List<Chain.Entry> all = store.records();
            print(common.isJson() ? RecordText.exportJson(all) : RecordText.exportCsv(all));
        }
        return Faults.DONE;
    }

    private FarmStore open(Common common) {
        ParseResult parsed = spec.commandLine().getParseResult();
        if (parsed.hasSubcommand() && !parsed.matchedOptions().isEmpty()) {
            String name = parsed.subcommand().commandSpec().name();
            throw new EarleafException(Problem.of(
                    "record.them-after-it",
                    Said.text("record"),
                    Said.of("found.options-before", "name", name),
                    "name",
                    name));
        }
        FarmSource.refuseFolder(common, "record");
        return FarmStore.open(common.farm());
    }

    private static List<Pass> planned(Farm farm) {
        return farm.passes().stream()
                .filter(p -> p.state() == Pass.State.PLANNED || p.state() == Pass.State.LOADED)
                .toList();
    }

    private static Chain.Entry find(FarmStore store, String number) {
        return store.findRecord(number)
                .orElseThrow(() -> new EarleafException(
                        Problem.of("record.the-number-or-id-of", Said.text("record"), Said.text(number))));
    }

    private Instant now() {
        return wiring.clock().instant().truncatedTo(ChronoUnit.SECONDS);
    }

    private static String newId() {
        return Ids.next();
    }

    private void filed(Common common, Chain.Entry entry, FarmStore store, Farm farm) {
        List<Chain.Entry> all = store.records();
        print(
                common.isJson()
                        ? RecordText.json(entry, all, farm)
                        : tell("cli.record.filed-2", "entry", RecordText.of(entry, all, farm)));
    }

    private void print(String text) {
        Printed.print(spec, text);
    }
}
