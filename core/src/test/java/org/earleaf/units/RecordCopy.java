// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;

/** A record like another but for one component, which may lie in a record within it ("shelf.rigs"), for tests that ask what one fact changes. */
public final class RecordCopy {
    private RecordCopy() {}

    public static <R extends Record> R with(R record, String path, Object value) {
        int dot = path.indexOf('.');
        if (dot >= 0) {
            String outer = path.substring(0, dot);
            return with(record, outer, with((Record) part(record, outer), path.substring(dot + 1), value));
        }
        return replaced(record, path, value);
    }

    private static Object part(Record record, String component) {
        try {
            return record.getClass().getMethod(component).invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalArgumentException(record.getClass() + " has no " + component, e);
        }
    }

    private static <R extends Record> R replaced(R record, String component, Object value) {
        RecordComponent[] all = record.getClass().getRecordComponents();
        if (Arrays.stream(all).noneMatch(c -> c.getName().equals(component))) {
            throw new IllegalArgumentException(record.getClass() + " has no " + component);
        }
        Object[] values = new Object[all.length];
        try {
            for (int k = 0; k < all.length; k++) {
                values[k] = all[k].getName().equals(component)
                        ? value
                        : all[k].getAccessor().invoke(record);
            }
            @SuppressWarnings("unchecked") // a record's class declares what it is
            Class<R> type = (Class<R>) record.getClass();
            Constructor<R> constructor = type.getDeclaredConstructor(
                    Arrays.stream(all).map(RecordComponent::getType).toArray(Class<?>[]::new));
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new LinkageError(e.getMessage(), e);
        }
    }
}
