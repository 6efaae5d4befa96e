// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.words.Words;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelEntry;
import org.earleaf.label.LabelItem;
import org.springframework.jdbc.core.JdbcTemplate;

/** Label entries in the order in which they came; none is ever changed. Runs inside a transaction. */
final class LabelRows {
    private final JdbcTemplate sql;

    LabelRows(JdbcTemplate sql) {
        this.sql = sql;
    }

    LabelBook book() {
        Names names = Names.of(sql);
        return new LabelBook(sql.query(
                "select body from label_entry order by seq", (row, k) -> LoadJson.label(row.getString(1), names)));
    }

    void add(LabelEntry entry) {
        Names names = Names.of(sql);
        sql.update(
                "insert into label_entry (seq, product, crop, body) select coalesce(max(seq), 0) + 1, ?, ?, ?"
                        + " from label_entry",
                names.id(Names.Kind.PRODUCT, entry.product()),
                entry.crop(),
                LoadJson.text(entry, names));
    }

    /**
     * Takes the entries of a folder that are not stored yet behind those that are. One that was stored before stays where
     * it stands, so that an old folder does not come before what was entered since.
     *
     * @return what differs from the entry that counted so far
     */
    List<Difference> take(LabelBook folder) {
        LabelBook stored = book();
        Names names = Names.of(sql);
        List<Difference> differences = new ArrayList<>();
        for (LabelEntry told : folder.entries()) {
            LabelEntry entry = LoadJson.today(told, names);
            if (!stored.entries().contains(entry)) {
                Optional<LabelEntry> before = stored.findWaiting(entry.product(), entry.crop())
                        .or(() -> stored.find(entry.product(), entry.crop()));
                before.ifPresent(was -> differences.addAll(differences(was, entry)));
                add(entry);
            }
        }
        return differences;
    }

    private static List<Difference> differences(LabelEntry was, LabelEntry is) {
        List<Difference> found = new ArrayList<>();
        String what = "label of " + is.product() + " on " + is.crop();
        for (LabelItem item : LabelItem.values()) {
            differ(
                    found,
                    what,
                    Words.US.say(item),
                    was.figure(item).entered(),
                    is.figure(item).entered());
        }
        differ(found, what, "version", was.version(), is.version());
        differ(found, what, "what a season is", was.clock(), is.clock());
        differ(found, what, "active ingredients", was.actives(), is.actives());
        differ(found, what, "never in one tank with", was.neverWith(), is.neverWith());
        differ(found, what, "what goes in before it", was.after(), is.after());
        differ(found, what, "days until other crops", was.plantBack_d(), is.plantBack_d());
        differ(found, what, "entered and looked at by", people(was), people(is));
        return found;
    }

    private static String people(LabelEntry e) {
        return e.look().enteredBy() + (e.look().isDone() ? ", " + e.look().checkedBy() : ", nobody again");
    }

    private static void differ(List<Difference> found, String what, String part, Object was, Object is) {
        if (!was.equals(is)) {
            found.add(new Difference(what, part, metric -> told(was), metric -> told(is), ""));
        }
    }

    private static String told(Object value) {
        return value.toString().isEmpty() ? "not entered" : value.toString();
    }
}
