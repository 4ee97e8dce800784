using System.Globalization;
using System.Reflection;

namespace Mutants;

/// <summary>One test: a method, and for a theory the row that it is run with.</summary>
internal sealed record Trial(MethodInfo Method, object?[] Row)
{
    /// <summary>How long it takes [s].</summary>
    internal double Seconds { get; init; }

    /// <summary>All tests of a class.</summary>
    internal static IEnumerable<Trial> Of(Type type) =>
        from method in type.GetMethods()
        let mark = method.GetCustomAttributes().Select(one => one.GetType().Name).FirstOrDefault(name => name is "FactAttribute" or "TheoryAttribute")
        where mark is not null
        from row in mark == "FactAttribute" ? [[]] : Rows(method)
        select new Trial(method, row);

    /// <summary>What it says when it fails, or null.</summary>
    internal string? Run()
    {
        try
        {
            object test = Activator.CreateInstance(Method.DeclaringType!)!;
            MethodInfo method = Method.IsGenericMethodDefinition ? Method.MakeGenericMethod(Row[0]!.GetType()) : Method;
            (method.Invoke(test, Arguments(method)) as Task)?.GetAwaiter().GetResult();
            (test as IDisposable)?.Dispose();
            return null;
        }
        catch (TargetInvocationException error)
        {
            return error.InnerException!.Message;
        }
        catch (Exception error)
        {
            return error.Message;
        }
    }

    public override string ToString() => $"{Method.DeclaringType!.Name}.{Method.Name}";

    private static IEnumerable<object?[]> Rows(MethodInfo method) =>
        from data in method.GetCustomAttributes()
        let get = data.GetType().GetMethod("GetData", [typeof(MethodInfo)])
        where get is not null
        from row in (IEnumerable<object?[]?>)get.Invoke(data, [method])!
        select row ?? [null];

    private object?[] Arguments(MethodInfo method) =>
    [
        .. method.GetParameters().Select((parameter, i) => i >= Row.Length ? parameter.DefaultValue : Row[i] switch
        {
            IConvertible value when !parameter.ParameterType.IsInstanceOfType(value) && !parameter.ParameterType.IsEnum =>
                Convert.ChangeType(
                    value, Nullable.GetUnderlyingType(parameter.ParameterType) ?? parameter.ParameterType, CultureInfo.InvariantCulture),
            var value => value,
        }),
    ];
}
