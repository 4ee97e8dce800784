using System.Collections.Immutable;
using System.Reflection.Metadata;
using System.Reflection.PortableExecutable;

namespace FieldCheck.Tests.Architecture;

/// <summary>What a compiled assembly refers to outside itself, read from its tables (ECMA-335, part II.22).</summary>
/// <param name="Assemblies">Names of assemblies.</param>
/// <param name="Types">Full names of types.</param>
/// <param name="Members">Members, as "Namespace.Type.Member".</param>
/// <param name="Imports">Functions of the system's own libraries, as "library:function".</param>
internal sealed record CompiledUses(
    ImmutableArray<string> Assemblies,
    ImmutableArray<string> Types,
    ImmutableArray<string> Members,
    ImmutableArray<string> Imports)
{
    internal static CompiledUses Of(string path)
    {
        using PEReader file = new(File.OpenRead(path));
        MetadataReader tables = file.GetMetadataReader();
        return new(
            [.. tables.AssemblyReferences.Select(handle => tables.GetString(tables.GetAssemblyReference(handle).Name))],
            [.. tables.TypeReferences.Select(handle => NameOf(tables, handle))],
            [.. tables.MemberReferences.Select(tables.GetMemberReference)
                .Where(member => member.Parent.Kind == HandleKind.TypeReference)
                .Select(member => $"{NameOf(tables, (TypeReferenceHandle)member.Parent)}.{tables.GetString(member.Name)}")
                .Distinct()],
            [.. tables.MethodDefinitions.Select(handle => tables.GetMethodDefinition(handle).GetImport())
                .Where(import => !import.Module.IsNil)
                .Select(import => $"{tables.GetString(tables.GetModuleReference(import.Module).Name)}:{tables.GetString(import.Name)}")]);
    }

    private static string NameOf(MetadataReader tables, TypeReferenceHandle handle)
    {
        TypeReference type = tables.GetTypeReference(handle);
        string name = tables.GetString(type.Name);
        return type.ResolutionScope.Kind == HandleKind.TypeReference
            ? $"{NameOf(tables, (TypeReferenceHandle)type.ResolutionScope)}.{name}"
            : $"{tables.GetString(type.Namespace)}.{name}";
    }
}
