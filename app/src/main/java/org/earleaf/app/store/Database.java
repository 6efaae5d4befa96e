// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import javax.sql.DataSource;
import org.earleaf.units.EarleafException;
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
            throw EarleafException.of(
                    file.toString(), "no folder there to write in", "an existing folder", "Make the folder first.");
        }
        if (!Files.exists(file) && !Files.isWritable(folder)) {
            throw StoreTrouble.readOnly(file);
        }
        return migrated(file);
    }

    static Database open(Path file) {
        if (!Files.isRegularFile(file)) {
            throw EarleafException.of(
                    file.toString(),
                    "no such file",
                    "a farm's database",
                    "Make it with: earleaf import --folder DIR --farm " + file + " (or name a folder with --folder).");
        }
        return migrated(file);
    }

    private static Database migrated(Path file) {
        Connections connections = Connections.open(file);
        try {
            migrate(file, connections);
            return new Database(file, connections);
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

    /** Looks without the write lock, and takes it only where tables are missing. */
    private static void migrate(Path file, Connections connections) {
        MigrationInfoService info = flyway(connections.reading()).info();
        for (MigrationInfo known : info.applied()) {
            if (known.getState() == MigrationState.FUTURE_SUCCESS) {
                throw EarleafException.of(
                        file.toString(),
                        "tables of version " + known.getVersion(),
                        "tables that this version of Earleaf knows",
                        "The file was written by a newer Earleaf; use that one.");
            }
        }
        if (info.pending().length > 0) {
            flyway(connections.writing()).migrate();
        }
    }

    private static Flyway flyway(DataSource source) {
        return Flyway.configure()
                .dataSource(source)
                .locations("classpath:db/common", "classpath:db/sqlite")
                .javaMigrations(new LabelMove())
                .load();
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
        return run(writing, work);
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
