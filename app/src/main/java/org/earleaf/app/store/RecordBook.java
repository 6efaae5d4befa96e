// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.earleaf.app.store.Merge.Stored;
import org.earleaf.field.Pass;
import org.earleaf.record.Chain;
import org.earleaf.record.FiledRecord;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.springframework.jdbc.core.JdbcTemplate;

/** The append-only book of records; its methods run inside a transaction. */
final class RecordBook {
    private final JdbcTemplate sql;

    RecordBook(JdbcTemplate sql) {
        this.sql = sql;
    }

    List<Chain.Entry> all() {
        return sql.query(
                "select number, previous, entry, hash from application_record order by number",
                (row, k) -> new Chain.Entry(row.getLong(1), row.getString(2), row.getString(3), row.getString(4)));
    }

    Chain.Entry fileMade(Pass made, Function<Pass, FiledRecord> account) {
        if (isFiled(made.id())) {
            throw new EarleafException(
                    Problem.of("record.filed-already", Said.text(made.id()), Said.of("found.filed-record")));
        }
        Pass kept = keep(made.in(Pass.State.MADE));
        return append(account.apply(kept));
    }

    Chain.Entry correct(FiledRecord correction, List<Pass> passes) {
        boolean known = all().stream().anyMatch(e -> e.record().id().equals(correction.corrects()));
        if (!known) {
            throw EarleafException.coded("record.unknown", "correction", correction.corrects());
        }
        passes.forEach(this::keep);
        return append(correction);
    }

    private boolean isFiled(String pass) {
        Integer count =
                sql.queryForObject("select count(*) from application_record where pass = ?", Integer.class, pass);
        return count != null && count > 0;
    }

    /** Puts the pass in the place of the one with its id, or after the last under an id of its own. */
    private Pass keep(Pass pass) {
        Merge tables = new Merge(sql);
        Optional<Stored<Pass>> known = tables.stored(WorkTables.PASSES).stream()
                .filter(s -> s.fact().id().equals(pass.id()))
                .findFirst();
        if (known.isPresent()) {
            sql.update(
                    WorkTables.PASSES.update(),
                    WorkTables.PASSES.updateArguments(known.get().seq(), pass, tables.names()));
            return pass;
        }
        Pass added = pass.withId(Ids.next());
        tables.insert(WorkTables.PASSES, List.of(added));
        return added;
    }

    /** Files a record behind the last; refused with everything that is missing. */
    Chain.Entry append(FiledRecord record) {
        List<Problem> problems = record.problems();
        if (!problems.isEmpty()) {
            throw new EarleafException(problems);
        }
        List<Chain.Entry> book = all();
        Optional<Chain.Entry> last = book.isEmpty() ? Optional.empty() : Optional.of(book.get(book.size() - 1));
        Chain.Entry entry = Chain.next(last, record);
        sql.update(
                "insert into application_record (number, id, pass, entry, previous, hash) values (?, ?, ?, ?, ?, ?)",
                entry.number(),
                record.id(),
                record.passId(),
                entry.text(),
                entry.previous(),
                entry.hash());
        return entry;
    }
}
