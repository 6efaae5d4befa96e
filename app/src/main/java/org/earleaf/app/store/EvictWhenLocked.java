// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import com.zaxxer.hikari.SQLExceptionOverride;
import java.sql.SQLException;
import org.sqlite.SQLiteException;

/**
 * Throws a connection away that found the file locked. The driver notes that auto-commit is off before it has begun the
 * transaction; when beginning fails, the next user of that connection would write outside any transaction.
 */
public final class EvictWhenLocked implements SQLExceptionOverride {
    @java.lang.Override
    public SQLExceptionOverride.Override adjudicate(SQLException e) {
        boolean locked = e instanceof SQLiteException sqlite && SqliteErrors.isLocked(sqlite.getResultCode());
        return locked ? SQLExceptionOverride.Override.MUST_EVICT : SQLExceptionOverride.Override.CONTINUE_EVICT;
    }
}
