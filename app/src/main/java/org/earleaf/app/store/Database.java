// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import javax.sql.DataSource;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.MigrationInfo;
import org.flywaydb.core.api.MigrationInfoService;
import org.flywaydb.core.api.MigrationState;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.datasource.DataSourceTransactionManager;
import org.springframework.transaction.TransactionException;
import org.springframework.transaction.support.TransactionTemplate;

/** One open database file with the tables of this version. */
final class Database implements AutoCloseable {
    /** Up to here the order of the file is looked through at every opening; it takes a tenth of a second. */
    private static final long QUICKLY_CHECKED = 64L << 20;

    private final Path file;
    private final Connections connections;
    private final JdbcTemplate sql;
    private final TransactionTemplate writing;
    private final TransactionTemplate reading;

    private Database(Path file, Connections connections) {
        DataSource source = connections.either();
        this.file = file;
        this.connections = connections;
        this.sql = new JdbcTemplate(source);
        this.sql.setExceptionTranslator(new SqliteErrors());
        DataSourceTransactionManager transactions = new DataSourceTransactionManager(source);
        this.writing = new TransactionTemplate(transactions);
        this.reading = new TransactionTemplate(transactions);
        this.reading.setReadOnly(true);
    }

    /** Opens the file, and makes it first where there is none. */
    static Database create(Path file) {
        Path folder = Objects.requireNonNullElse(file.toAbsolutePath().getParent(), Path.of("."));
        if (!Files.isDirectory(folder)) {
            throw refused("store.no-folder", file, Said.of("found.no-folder"));
        }
        if (!Files.exists(file) && !Files.isWritable(folder)) {
            throw StoreTrouble.readOnly(file);
        }
        return migrated(file);
    }

    static Database open(Path file) {
        if (!Files.isRegularFile(file)) {
            throw new EarleafException(Problem.of(
                    "store.no-file", Said.text(file.toString()), Said.of("found.no-file"), "file", file.toString()));
        }
        return migrated(file);
    }

    private static EarleafException refused(String code, Path file, Said seen) {
        return new EarleafException(Problem.of(code, Said.text(file.toString()), seen));
    }

    private static Database migrated(Path file) {
        Connections connections = Connections.open(file);
        try {
            int migrations = migrate(file, connections);
            Database db = new Database(file, connections);
            db.check(migrations);
            return db;
        } catch (FlywayException e) {
            connections.close();
            throw SqliteErrors.findTrouble(file, e)
                    .<EarleafException>map(t -> t)
                    .orElseGet(() -> Connections.notADatabase(file, e));
        } catch (RuntimeException e) {
            connections.close();
            throw e;
        }
    }

    /**
     * Looks without the write lock, and takes it only where tables are missing.
     *
     * @return how many migrations made the tables
     */
    private static int migrate(Path file, Connections connections) {
        MigrationInfoService info = flyway(connections.reading()).info();
        for (MigrationInfo known : info.applied()) {
            if (known.getState() == MigrationState.FUTURE_SUCCESS) {
                throw refused(
                        "store.newer",
                        file,
                        Said.of("found.newer-tables", "version", String.valueOf(known.getVersion())));
            }
        }
        if (info.pending().length > 0) {
            flyway(connections.writing()).migrate();
        }
        return info.applied().length + info.pending().length;
    }

    private static Flyway flyway(DataSource source) {
        return Flyway.configure()
                .dataSource(source)
                .locations("classpath:db/common", "classpath:db/sqlite")
                .javaMigrations(new LabelMove(), new ScoutedMove())
                .load();
    }

    /** What can be seen of damage at once, before anything is read or written. */
    private void check(int migrations) {
        Seals seals = new Seals(sql);
        boolean sealed = reading(() -> {
            if (Files.exists(file) && size() <= QUICKLY_CHECKED) {
                refuse(sql.queryForList("pragma quick_check(1)", String.class).stream()
                        .filter(said -> !said.equals("ok"))
                        .toList());
            }
            if (seals.isFor(migrations) && !seals.hasItsTables()) {
                refuse(List.of("its tables are not as they were made"));
            }
            return seals.isFor(migrations);
        });
        if (!sealed) {
            inTransaction(() -> {
                seals.renew(migrations);
                return true;
            });
        }
    }

    private long size() {
        try {
            return Files.size(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void refuse(List<String> damage) {
        if (!damage.isEmpty()) {
            throw StoreTrouble.damaged(file, String.join("; ", damage));
        }
    }

    /** Refuses a file of which any row is not what was written. Runs inside a transaction. */
    void requireAsWritten() {
        refuse(new Seals(sql).broken());
    }

    /** Refuses a file that is damaged anywhere that matters: its order, its indexes, what refers to what, its rows. */
    void requireWhole() {
        reading(this::whole);
    }

    private boolean whole() {
        refuse(sql.queryForList("pragma integrity_check(5)", String.class).stream()
                .filter(said -> !said.equals("ok"))
                .toList());
        refuse(sql.query(
                "pragma foreign_key_check",
                (row, k) -> row.getString(1) + ", row " + row.getLong(2) + ", refers to nothing"));
        requireAsWritten();
        return true;
    }

    Path file() {
        return file;
    }

    JdbcTemplate sql() {
        return sql;
    }

    /** Why nothing can be written; empty where it can, as far as can be told without trying. */
    Optional<StoreTrouble> findWhyOnlyRead() {
        return connections.findWhyOnlyRead();
    }

    /** All of the work or none of it, with the write lock from its start. */
    <T> T inTransaction(Supplier<T> work) {
        return run(writing, () -> {
            T done = work.get();
            new Seals(sql).seal();
            return done;
        });
    }

    /** Work that reads one state of the file and writes nothing; no writer makes it wait. */
    <T> T reading(Supplier<T> work) {
        return run(reading, work);
    }

    private <T> T run(TransactionTemplate transaction, Supplier<T> work) {
        try {
            return Objects.requireNonNull(transaction.execute(status -> work.get()));
        } catch (DataAccessException | TransactionException e) {
            throw SqliteErrors.findTrouble(file, e)
                    .<RuntimeException>map(this::why)
                    .orElseGet(() -> ifWhole(e));
        } catch (EarleafException e) {
            throw e;
        } catch (RuntimeException e) {
            throw ifWhole(e);
        }
    }

    /** What nobody expected of a file that turns out damaged is the damage's. */
    private RuntimeException ifWhole(RuntimeException e) {
        try {
            reading.execute(status -> whole());
            return e;
        } catch (StoreTrouble damage) {
            return damage;
        } catch (RuntimeException unreadable) {
            return SqliteErrors.findTrouble(file, unreadable)
                    .<RuntimeException>map(t -> t)
                    .orElse(e);
        }
    }

    /** A file that is only read for want of room says so. */
    private StoreTrouble why(StoreTrouble trouble) {
        return trouble.kind() == StoreTrouble.Kind.READ_ONLY
                ? connections.findWhyOnlyRead().orElse(trouble)
                : trouble;
    }

    @Override
    public void close() {
        connections.close();
    }
}
