package org.toeline.ledger.store;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Proxy;
import java.sql.CallableStatement;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.Statement;
import java.util.function.UnaryOperator;
import javax.sql.DataSource;

/** Lets a test act before every statement and every commit that goes to the real database. */
final class StatementWatch implements UnaryOperator<DataSource> {

    private final Runnable before;

    StatementWatch(Runnable before) {
        this.before = before;
    }

    @Override
    public DataSource apply(DataSource source) {
        return watched(source, DataSource.class);
    }

    private <T> T watched(T target, Class<T> type) {
        return type.cast(Proxy.newProxyInstance(
                type.getClassLoader(), new Class<?>[] {type}, (proxy, method, arguments) -> {
                    String name = method.getName();
                    if (name.startsWith("execute") || name.equals("commit")) {
                        before.run();
                    }
                    Object answer;
                    try {
                        answer = method.invoke(target, arguments);
                    } catch (InvocationTargetException e) {
                        throw e.getCause();
                    }
                    if (answer instanceof CallableStatement) {
                        return answer;
                    }
                    if (answer instanceof PreparedStatement statement) {
                        return watched(statement, PreparedStatement.class);
                    }
                    if (answer instanceof Statement statement) {
                        return watched(statement, Statement.class);
                    }
                    return name.equals("getConnection") && target instanceof DataSource
                            ? watched((Connection) answer, Connection.class)
                            : answer;
                }));
    }
}
