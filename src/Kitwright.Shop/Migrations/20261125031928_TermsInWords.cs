using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Kitwright.Shop.Migrations
{
    /// <inheritdoc />
    public partial class TermsInWords : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<string>(
                name: "SoldBy",
                table: "Terms",
                type: "TEXT",
                maxLength: 100,
                nullable: false,
                defaultValue: "Yard");

            migrationBuilder.AddColumn<string>(
                name: "Words",
                table: "Terms",
                type: "TEXT",
                maxLength: 100,
                nullable: false,
                defaultValue: "American");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "SoldBy",
                table: "Terms");

            migrationBuilder.DropColumn(
                name: "Words",
                table: "Terms");
        }
    }
}
