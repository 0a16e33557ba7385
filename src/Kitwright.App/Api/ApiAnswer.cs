using System.Collections.Immutable;
using Kitwright.App.Commands;
using Kitwright.App.Web;
using Kitwright.Findings;
using Kitwright.Plans;
using Microsoft.AspNetCore.Mvc;

namespace Kitwright.App.Api;

/// <summary>What the API answers: documents as the commands print them, and problem details (RFC 9457) with findings.</summary>
internal static class ApiAnswer
{
    /// <summary>Findings that mean something else than an input that cannot be used.</summary>
    private static readonly ImmutableDictionary<string, int> Statuses = new Dictionary<string, int>
    {
        ["ledger.other-booking"] = StatusCodes.Status409Conflict,
        ["revision.other"] = StatusCodes.Status409Conflict,
        ["revision.no-base"] = StatusCodes.Status409Conflict,
        ["api.no-quilt"] = StatusCodes.Status404NotFound,
        ["api.no-booking"] = StatusCodes.Status404NotFound,
        ["leftovers.no-booking"] = StatusCodes.Status404NotFound,
        ["leftovers.gone"] = StatusCodes.Status409Conflict,
        ["api.no-schema"] = StatusCodes.Status404NotFound,
        ["blocks.unknown"] = StatusCodes.Status404NotFound,
        ["license.booklet"] = StatusCodes.Status403Forbidden,
        ["license.sizes"] = StatusCodes.Status403Forbidden,
        ["storage.full"] = StatusCodes.Status507InsufficientStorage,
        ["storage.busy"] = StatusCodes.Status503ServiceUnavailable,
        ["storage.read-only"] = StatusCodes.Status503ServiceUnavailable,
        ["storage.disk"] = StatusCodes.Status503ServiceUnavailable,
        ["storage.damaged"] = StatusCodes.Status503ServiceUnavailable,
        ["api.too-large"] = StatusCodes.Status413PayloadTooLarge,
    }.ToImmutableDictionary();

    public static IResult Json(object document) => Results.Json(document, PlanJson.Options);

    /// <summary>Why nothing was done: each finding with its rule, place, reason and remedy.</summary>
    public static IResult Refused(params ImmutableArray<Finding> findings)
    {
        var fault = findings.FirstOrDefault(finding => finding.Weight == Weight.Fault) ?? findings[0];
        var status = Statuses.GetValueOrDefault(fault.Rule, StatusCodes.Status422UnprocessableEntity);
        return Results.Problem(
            new ProblemDetails
            {
                Type = $"/api/problems/{NameOf(status)}",
                Title = Saying.Say($"api.problem.{NameOf(status)}"),
                Status = status,
                Detail = Saying.Say(fault.Reason) + " " + Saying.Say(fault.Remedy),
                Extensions = { ["findings"] = Report.Json(findings) },
            }
        );
    }

    private static string NameOf(int status) =>
        status switch
        {
            StatusCodes.Status403Forbidden => "not-allowed",
            StatusCodes.Status404NotFound => "not-found",
            StatusCodes.Status409Conflict => "conflict",
            StatusCodes.Status413PayloadTooLarge => "too-large",
            StatusCodes.Status503ServiceUnavailable or StatusCodes.Status507InsufficientStorage => "not-kept",
            _ => "findings",
        };
}
